import type { CarRow } from '@quartermark/db';
import { type CarInput, carProfile } from '@quartermark/engine/log';

/** A stored car as its form sends it; a profile that a later schema faults is shown as it stands. */
export function carOf(row: CarRow): CarInput {
  const profile = carProfile.safeParse(row.profile);
  return {
    name: row.name,
    unit: row.unit,
    ...(row.odoDigits === null ? {} : { odoDigits: row.odoDigits }),
    profile: profile.success ? profile.data : (row.profile as CarInput['profile']),
  };
}
