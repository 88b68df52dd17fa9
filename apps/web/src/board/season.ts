import type { EventView, GarageView } from '@quartermark/api/client';
import { type Axis, BOARD_DAYS, type PlacedEvent, placeEvents } from './place.ts';

/** What every lane of the board shares. */
export type Season = {
  axis: Axis;
  /** on the axis, by their first day */
  events: readonly PlacedEvent<EventView>[];
  /** lines that their names take */
  rows: number;
};

export function seasonOf({ today }: GarageView, events: readonly EventView[]): Season {
  const axis = { today, days: BOARD_DAYS };
  const { placed, rows } = placeEvents(events, axis);
  return { axis, events: placed, rows };
}
