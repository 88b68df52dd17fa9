'use client';

import type { EntryInput } from '@quartermark/engine/log';
import { useRef, useState } from 'react';
import { newId } from '../client/make-id.ts';
import { refusalWords } from '../client/refusal-words.ts';
import type { NewEntryCommand, NewPhoto } from './queue/command.ts';
import { keepOrSend, sendStraight } from './queue/keep-or-send.ts';
import { keeper } from './queue/keeper.ts';
import { undoRecord } from './queue/line.ts';
import { useDoors } from './queue/use-doors.ts';

/** What was saved last and can be undone. `order` null: it went straight to the server. */
export type SavedHere = { entry: EntryInput; order: number | null };

const now = () => new Date().toISOString();

/**
 * Saves what was recorded: written down on this phone first, then sent. Where the phone keeps nothing it
 * goes straight to the server; where that cannot be reached either, nothing is called saved.
 */
export function usePocketSave(garageId: string | null) {
  const doors = useDoors();
  const [busy, setBusy] = useState(false);
  const [trouble, setTrouble] = useState<string | null>(null);
  const [saved, setSaved] = useState<SavedHere | null>(null);
  const [undone, setUndone] = useState(false);
  // pressed again after "no answer", it is the same entry under the same id
  const pressed = useRef<{ what: string; entry: EntryInput; commandId: string } | null>(null);

  async function save(drawn: EntryInput, photos: readonly NewPhoto[] = []): Promise<boolean> {
    if (garageId === null || busy) return false;
    const what = sameness(drawn);
    if (pressed.current?.what !== what)
      pressed.current = { what, entry: drawn, commandId: newId() };
    const { entry, commandId } = pressed.current;
    const input = { entry, confirmed: [] };
    const asked: NewEntryCommand = {
      verb: 'entry.record',
      input,
      commandId,
      garageId,
      madeAt: now(),
    };
    setBusy(true);
    setTrouble(null);
    try {
      const order = await keepOrSend(doors, asked, photos);
      pressed.current = null;
      note(entry, order);
      return true;
    } catch (error) {
      setTrouble(refusalWords(error).message);
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
        await sendStraight(doors, {
          ...undoing,
          verb: 'entry.remove',
          input: { entry, baseRevision: 1 },
        });
      else await keeper.act((db) => undoRecord(db, order, { ...undoing, entry }));
      setSaved(null);
      setUndone(true);
    } catch (error) {
      setTrouble(`Not undone. ${refusalWords(error).message}`);
    }
  }

  /** What a whole form saved through its own door. */
  const note = (entry: EntryInput, order: number | null) => {
    setSaved({ entry, order });
    setUndone(false);
  };
  const clear = () => setTrouble(null);
  return { save, undo, note, busy, trouble, saved, undone, clear };
}

/** What makes two presses one: everything but the id and the minute. */
function sameness(entry: EntryInput): string {
  return JSON.stringify({ ...entry, id: '', time: '' });
}
