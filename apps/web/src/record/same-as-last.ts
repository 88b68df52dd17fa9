import type { LastValues } from '@quartermark/api/client';
import type { EntryInput } from '@quartermark/engine/log';
import { emptyFields, ownFields, type RecordFields, type Start } from './record-fields.ts';
import type { FormKind } from './record-kinds.ts';

/** The last entry of a kind that tends to be like the one before; null where there is none. */
export function lastAlike(kind: FormKind, last: LastValues): EntryInput | null {
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
  const { oilTempPeak, coolantTempPeak } = empty.session;
  return {
    ...own,
    ...(own.session
      ? { session: { ...own.session, oilTempPeak, coolantTempPeak, remarks: '' } }
      : {}),
    ...(own.strip ? { strip: { ...own.strip, weather: '', details: [] } } : {}),
    ...(own.drive ? { drive: { ...own.drive, until: '' } } : {}),
    driver: last.driver ?? '',
  };
}
