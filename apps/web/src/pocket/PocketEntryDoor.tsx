'use client';

import type { EntryInput } from '@quartermark/engine/log';
import { type ReactNode, useMemo } from 'react';
import { newId } from '../client/make-id.ts';
import { refusalWords } from '../client/refusal-words.ts';
import { type EntryDoor, EntryDoorContext, type Sent } from '../record/entry-door.ts';
import { type PhotoUploader, PhotoUploaderContext } from '../record/photo-uploader.ts';
import type { EntryAsk } from './queue/command.ts';
import { keepOrSend } from './queue/keep-or-send.ts';
import { layAside } from './queue/line.ts';
import { pocketDb, storeTrouble } from './queue/store.ts';
import { useDoors } from './queue/use-doors.ts';

type PocketEntryDoorProps = {
  garageId: string;
  /** told what was saved and its place in the line; the page says so */
  onSaved: (entry: EntryInput, order: number | null) => void;
  children: ReactNode;
};

/** The door of the pocket page: everything goes into the line first, photos are laid aside for it. */
export function PocketEntryDoor({ garageId, onSaved, children }: PocketEntryDoorProps) {
  const doors = useDoors();
  const door = useMemo((): EntryDoor => {
    async function put(
      asked: { garageId: string; commandId: string },
      ask: EntryAsk,
    ): Promise<Sent> {
      const { garageId, commandId } = asked;
      const madeAt = new Date().toISOString();
      const order = await keepOrSend(doors, { ...ask, garageId, commandId, madeAt });
      onSaved(ask.input.entry, order);
      // the page has its own way back
      return { at: 'device', undo: () => Promise.resolve() };
    }
    return {
      record: (input) =>
        put(input, {
          verb: 'entry.record',
          // the form's own schema has read it
          input: { entry: input.entry as EntryInput, confirmed: input.confirmed ?? [] },
        }),
      amend: () => Promise.reject(new Error('nothing on the pocket page amends what was sent')),
      remove: () => Promise.reject(new Error('nothing on the pocket page removes what was sent')),
      standing: () => Promise.resolve(null),
      away: () => {},
    };
  }, [doors, onSaved]);
  const uploader = useMemo(
    (): PhotoUploader => async (blob) => {
      const photo = { photoId: newId(), garageId, blob };
      try {
        await layAside(await pocketDb(), photo, Date.now());
      } catch (notKept) {
        await doors.photo({ ...photo, entryId: '', sent: false }).catch((error: unknown) => {
          const { refusal, message } = refusalWords(error);
          throw new Error(refusal ? message : storeTrouble(notKept));
        });
      }
      return { id: photo.photoId };
    },
    [doors, garageId],
  );
  return (
    <EntryDoorContext value={door}>
      <PhotoUploaderContext value={uploader}>{children}</PhotoUploaderContext>
    </EntryDoorContext>
  );
}
