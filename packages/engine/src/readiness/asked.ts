import type { GearAnalysis } from '../gear/result.ts';
import type { Book, PlannedEvent } from '../log/book.ts';
import type { EventInput } from '../log/event.ts';
import type { EventSort } from '../log/event-sort.ts';
import type { Gear } from '../log/gear.ts';
import type { Item } from '../log/item.ts';
import type { BookOrder } from '../log/order.ts';
import type { DistanceUnit } from '../log/units.ts';

/** A component, or somebody who drives, with what is known of it on the book's day. */
export type Piece = {
  gear: Gear;
  items: readonly Item[];
  orders: readonly BookOrder[];
  /** null: something it rests on cannot be read, so nothing is known */
  result: GearAnalysis | null;
};

/** An event that is over and named the car. */
export type PastEvent = {
  id: string;
  name: string;
  sort: EventSort;
  start: string;
  end: string;
  /** use on those days is in the car's log, or somebody said that it did not go */
  onRecord: boolean;
};

/** A need of a car that somebody took upon himself for the event. */
export type CarAcceptance = {
  acceptanceId: string;
  need: string;
  by: string;
  /** civil date */
  on: string;
  because: string;
};

/** Units of the sentences: the car's odometer and the garage's bottles. */
export type SaidIn = { distance: DistanceUnit; volume: 'l' | 'usQt' | 'impQt' };

/** A car, all that is known of it, and those who drive it. */
export type CarAsked = {
  book: Book;
  /** components on it now */
  parts: readonly Piece[];
  /** people who drive it at the event; empty where nobody said, and for the road */
  drivers: readonly Piece[];
  past: readonly PastEvent[];
  acceptances: readonly CarAcceptance[];
  saidIn: SaidIn;
};

/**
 * What it is to be ready for; null: the road, today. `planned`: what the car does there as its book's file
 * counts it; absent: by the event's own `use`.
 */
export type EventAsked = { id: string; event: EventInput; planned?: PlannedEvent } | null;
