import { addDays } from '@quartermark/engine/calendar';
import type { EntryInput } from '@quartermark/engine/log';

/** A storage window as the entries tell it; its id is that of the entry that opened it. */
export type FoldedLayUp = {
  id: string;
  startOn: string;
  endOn: string | null;
  closedBy: string | null;
};

export type StorageEntry = Extract<EntryInput, { kind: 'layUp' | 'wakeUp' }>;

/**
 * Storage windows of one car. A lay-up opens one; a wake-up closes the one it falls into on the day
 * before, because on the day it wakes the car is in use again (a window of one day keeps its day).
 *
 * Made anew from all entries after each change, so amending or removing any of them cannot leave a
 * window behind.
 *
 * @param entries lay-ups and wake-ups of the car, tombstones left out, in the order of the log
 * @example foldLayUps([layUp on 2025-11-02, wakeUp on 2026-03-14]) // 2025-11-02 to 2026-03-13
 */
export function foldLayUps(entries: readonly StorageEntry[]): FoldedLayUp[] {
  const windows: FoldedLayUp[] = [];
  for (const entry of entries) {
    if (entry.kind === 'layUp') {
      windows.push({
        id: entry.id,
        startOn: entry.on,
        endOn: entry.until ?? null,
        closedBy: null,
      });
      continue;
    }
    const covering = windowOn(windows, entry.on);
    if (!covering) continue;
    const dayBefore = addDays(entry.on, -1);
    covering.endOn = covering.startOn;
    if (dayBefore > covering.startOn) covering.endOn = dayBefore;
    covering.closedBy = entry.id;
  }
  return windows;
}

/** The window that covers a day and was not closed by a wake-up yet. */
export function windowOn(windows: readonly FoldedLayUp[], day: string): FoldedLayUp | undefined {
  return windows.findLast(
    (window) =>
      window.closedBy === null &&
      window.startOn <= day &&
      (window.endOn === null || window.endOn >= day),
  );
}

export function isStorage(entry: EntryInput): entry is StorageEntry {
  return entry.kind === 'layUp' || entry.kind === 'wakeUp';
}
