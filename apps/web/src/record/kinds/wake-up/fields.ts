import type { EntryOf } from '@quartermark/engine/log';
import type { RecordFields } from '../../record-fields.ts';
import type { StorageLine } from '../../storage-lines.ts';
import { type Members, some } from '../../typed.ts';

/** What was undone; nothing is taken for undone before a hand has ticked it. */
export type WakeUpFields = { lines: StorageLine[] };

export const emptyWakeUp = (): WakeUpFields => ({ lines: [] });

export const wakeUpFields = (entry: EntryOf<'wakeUp'>): WakeUpFields => ({
  lines: entry.lines ?? [],
});

export const readWakeUp = ({ wakeUp }: RecordFields): Members => ({ lines: some(wakeUp.lines) });
