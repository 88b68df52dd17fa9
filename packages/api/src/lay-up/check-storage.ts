import { listLayUps } from '@quartermark/db';
import type { EntryInput } from '@quartermark/engine/log';
import type { Writing } from '../command/run-command.ts';
import { badField } from '../refused.ts';
import { windowOn } from './fold.ts';

/** A car is laid up once, and only a car that is laid up wakes. @throws Refused `badInput` */
export async function checkStorage({ tx, garage }: Writing, entry: EntryInput): Promise<void> {
  if (entry.car === undefined || (entry.kind !== 'layUp' && entry.kind !== 'wakeUp')) return;
  const windows = (await listLayUps(tx, garage.id, entry.car))
    .filter((window) => window.id !== entry.id)
    // an amended wake-up first gives back what it closed
    .map((window) =>
      window.closedBy === entry.id ? { ...window, closedBy: null, endOn: null } : window,
    );
  const open = windowOn(windows, entry.on);
  if (entry.kind === 'layUp' && open)
    throw badField(
      'entry.on',
      `on: the car is laid up since ${open.startOn} already; record its wake-up first, or change that entry`,
    );
  if (entry.kind === 'wakeUp' && !open)
    throw badField(
      'entry.on',
      `on: no lay-up covers ${entry.on}; record the lay-up first, or correct the date`,
    );
}
