import { analyseBook } from '../../readers/analyse-book.ts';
import type { Analysis } from '../../wear/result.ts';
import type { CarAsked, EventAsked } from '../asked.ts';
import { fuelToTake } from './fuel-to-take.ts';
import { oilToTake } from './oil-to-take.ts';
import type { TakeAlong } from './result.ts';
import { tripOf } from './trip.ts';

/**
 * What to take along to an event: oil and fuel for what the car does there and the way there and back, by
 * its own log. Advice; the manual and the organiser's rules decide.
 *
 * @param car everything known of it on its book's day
 * @param event whether or not it names the car
 * @param analysis of the same book; worked out where it is not given
 * @throws RangeError for a date that does not exist
 * @example takeAlong(car, event).oil.reason // "Likely 1.4 L, no more than 2.1 L nine times in ten: ..."
 */
export function takeAlong(
  car: CarAsked,
  event: NonNullable<EventAsked>,
  analysis: Analysis = analyseBook(car.book),
): TakeAlong {
  const trip = tripOf(event, car.book.car.id);
  return { oil: oilToTake(car, trip, analysis), fuel: fuelToTake(car, trip) };
}
