import { listEntriesOfKinds, replaceLayUps } from '@quartermark/db';
import { type EntryInput, sortEntries } from '@quartermark/engine/log';
import type { Writing } from '../command/run-command.ts';
import { bodiesOf } from '../entry/body-of.ts';
import { foldLayUps, isStorage } from './fold.ts';

/** Brings a car's storage windows in line with its entries, after one of them changed. */
export async function rebuildLayUps(
  { tx, garage, now }: Writing,
  entry: EntryInput,
): Promise<void> {
  if (entry.car === undefined || !isStorage(entry)) return;
  const rows = await listEntriesOfKinds(tx, garage.id, entry.car, ['layUp', 'wakeUp']);
  const windows = foldLayUps(
    sortEntries(bodiesOf(rows)).flatMap((one) => (isStorage(one) ? [one] : [])),
  );
  await replaceLayUps(tx, garage.id, entry.car, windows, now);
}
