import type { LastValues } from '@quartermark/api/client';
import type { EntryInput, EntryKind } from '@quartermark/engine/log';
import { emptyFields, ownFields, type RecordFields } from './record-fields.ts';
import type { Start } from './start.ts';

/** The last entry of a kind that tends to be like the one before; null where there is none. */
export function lastAlike(kind: EntryKind, last: LastValues): EntryInput | null {
  if (kind === 'session' || kind === 'strip' || kind === 'drive') return last[kind];
  return null;
}

/**
 * What is taken over from the last one: where it was, how much, by whom. What was read or noticed that
 * day is not: readings, times, temperatures, remarks and notes are each day's own.
 */
export function sameAsLast(last: EntryInput, start: Start): Partial<RecordFields> {
  const empty = emptyFields(start);
  const own = ownFields(last, empty);
  const { oilTempPeak, coolantTempPeak, pressuresCold, pressuresHot, fuelUsed, event } =
    empty.session;
  return {
    ...own,
    ...(own.session
      ? {
          session: {
            ...own.session,
            oilTempPeak,
            coolantTempPeak,
            pressuresCold,
            pressuresHot,
            fuelUsed,
            event,
            remarks: '',
          },
        }
      : {}),
    ...(own.strip ? { strip: { ...own.strip, weather: '', details: [] } } : {}),
    ...(own.drive ? { drive: { ...own.drive, until: '' } } : {}),
    driver: last.driver ?? '',
  };
}
