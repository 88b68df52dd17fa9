import type { GarageRow } from '@quartermark/db';
import { todayIn } from '@quartermark/engine/calendar';
import type { GarageView } from '../views.ts';

export function garageViewOf(row: GarageRow, now: Date): GarageView {
  const { id, name, zone, hemisphere, distanceUnit, volumeUnit, demo, revision } = row;
  const today = todayIn(now, zone);
  return { id, name, zone, hemisphere, distanceUnit, volumeUnit, demo, today, revision };
}
