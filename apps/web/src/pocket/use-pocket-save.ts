'use client';

import type { EntryInput } from '@quartermark/engine/log';
import { useRef, useState } from 'react';
import { newId } from '../client/make-id.ts';
import { refusalWords } from '../client/refusal-words.ts';
import { useTRPCClient } from '../client/trpc.ts';
import type { Command, NewCommand, NewPhoto } from './queue/command.ts';
import { doorsOf } from './queue/doors.ts';
import { keeper } from './queue/keeper.ts';
import { undoRecord } from './queue/line.ts';
import { storeTrouble } from './queue/store.ts';

/** What was saved last and can be undone. `order` null: it went straight to the server. */
export type SavedHere = { entry: EntryInput; order: number | null };

const now = () => new Date().toISOString();

/**
 * Saves what was recorded: written down on this phone first, then sent. Where the phone keeps nothing it
 * goes straight to the server; where that cannot be reached either, nothing is called saved.
 */
export function usePocketSave(garageId: string | null) {
  const client = useTRPCClient();
  const [busy, setBusy] = useState(false);
  const [trouble, setTrouble] = useState<string | null>(null);
  const [saved, setSaved] = useState<SavedHere | null>(null);
  const [undone, setUndone] = useState(false);
  // pressed again after "no answer", it is the same entry under the same id
  const pressed = useRef<{ what: string; entry: EntryInput; commandId: string } | null>(null);

  async function straight(asked: NewCommand, photos: readonly NewPhoto[]): Promise<void> {
    const doors = doorsOf(client);
    const { garageId: garage } = asked;
    const entryId = asked.input.entry.id;
    for (const photo of photos)
      await doors.photo({ ...photo, garageId: garage, entryId, sent: false });
    const command = {
      ...asked,
      entryId,
      order: 0,
      state: 'sending',
      tries: 0,
    } as unknown as Command;
    await doors.command(command, false);
  }

  async function save(drawn: EntryInput, photos: readonly NewPhoto[] = []): Promise<boolean> {
    if (garageId === null || busy) return false;
    const what = sameness(drawn);
    if (pressed.current?.what !== what)
      pressed.current = { what, entry: drawn, commandId: newId() };
    const { entry, commandId } = pressed.current;
    const input = { entry, confirmed: [] };
    const asked: NewCommand = { verb: 'entry.record', input, commandId, garageId, madeAt: now() };
    setBusy(true);
    setTrouble(null);
    try {
      const order = await keeper.put(asked, photos).then(
        (command) => command.order,
        async (refused: unknown) => {
          await straight(asked, photos).catch((error: unknown) => {
            const { refusal, message } = refusalWords(error);
            throw new Error(refusal ? message : storeTrouble(refused));
          });
          return null;
        },
      );
      pressed.current = null;
      setSaved({ entry, order });
      setUndone(false);
      return true;
    } catch (error) {
      setTrouble(error instanceof Error ? error.message : String(error));
      return false;
    } finally {
      setBusy(false);
    }
  }

  async function undo(): Promise<void> {
    if (garageId === null || saved === null) return;
    const { entry, order } = saved;
    const undoing = { commandId: newId(), garageId, madeAt: now() };
    try {
      if (order === null)
        await straight({ ...undoing, verb: 'entry.remove', input: { entry, baseRevision: 1 } }, []);
      else await keeper.act((db) => undoRecord(db, order, { ...undoing, entry }));
      setSaved(null);
      setUndone(true);
    } catch (error) {
      setTrouble(`Not undone. ${refusalWords(error).message}`);
    }
  }

  return { save, undo, busy, trouble, saved, undone, clear: () => setTrouble(null) };
}

/** What makes two presses one: everything but the id and the minute. */
function sameness(entry: EntryInput): string {
  return JSON.stringify({ ...entry, id: '', time: '' });
}
