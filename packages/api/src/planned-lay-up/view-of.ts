import type { PlannedLayUpRow } from '@quartermark/db';
import type { PlannedLayUp } from '@quartermark/engine/log';
import type { PlannedLayUpView } from '../views.ts';

type Days = Pick<PlannedLayUpRow, 'startOn' | 'endOn'>;

/** The days as its form sends them. */
export function layUpOf({ startOn, endOn }: Days): PlannedLayUp {
  return { start: startOn, ...(endOn === null ? {} : { end: endOn }) };
}

export function plannedLayUpViewOf(row: PlannedLayUpRow): PlannedLayUpView {
  return { layUpId: row.id, carId: row.carId, layUp: layUpOf(row), revision: row.revision };
}
