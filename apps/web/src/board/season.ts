import type { EventList, EventView, PlannedLayUpView } from '@quartermark/api/client';
import { type Axis, BOARD_DAYS, type PlacedEvent, placeEvents, placeSpan } from './place.ts';

/** What every lane of the board shares. */
export type Season = {
  garageId: string;
  axis: Axis;
  /** on the axis, by their first day */
  events: readonly PlacedEvent<EventView>[];
  /** lines that their names take */
  rows: number;
  /** planned lay-ups that the axis reaches, by their first day */
  plans: readonly PlacedPlan[];
};

/** A planned lay-up on the axis. */
export type PlacedPlan = PlannedLayUpView & { from: number; to: number };

export function seasonOf({ garage, events, plannedLayUps }: EventList): Season {
  const axis = { today: garage.today, days: BOARD_DAYS };
  const { placed, rows } = placeEvents(events, axis);
  return {
    garageId: garage.id,
    axis,
    events: placed,
    rows,
    plans: placePlans(plannedLayUps, axis),
  };
}

function placePlans(plans: readonly PlannedLayUpView[], axis: Axis): PlacedPlan[] {
  return plans.flatMap((plan) => {
    const { start, end = null } = plan.layUp;
    const span = placeSpan({ from: start, to: end }, axis);
    return span ? [{ ...plan, ...span }] : [];
  });
}

/** Planned lay-ups of a car that the board reaches. */
export function plansOf({ plans }: Season, carId: string): PlacedPlan[] {
  return plans.filter((plan) => plan.carId === carId);
}
