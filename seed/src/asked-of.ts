import { analyseGear } from '@quartermark/engine/gear';
import { type EventInput, eventInput, gear, item } from '@quartermark/engine/log';
import { type CarAsked, type Piece, pastEventsOf } from '@quartermark/engine/readiness';
import { bookOf, gearBookOf } from './book-of.ts';
import type { SeedCar, SeedGarage, SeedGear } from './seed-garage.ts';

function pieceOf(garage: SeedGarage, piece: SeedGear, asOf: string): Piece {
  return {
    gear: gear.parse({ id: piece.id, gear: piece.gear }),
    items: piece.items.map(({ id, item: each }) => item.parse({ id, ...each })),
    orders: [],
    result: analyseGear(gearBookOf(garage, piece, asOf)),
  };
}

/** All that is known of one invented car and of those who drive it at an event, for the engine to judge. */
export function askedOf(
  garage: SeedGarage,
  car: SeedCar,
  event: EventInput,
  asOf: string,
): CarAsked {
  const book = bookOf(garage, car, asOf);
  const people = (event.crew ?? []).flatMap((one) => (one.car === car.id ? one.people : []));
  const pieces = garage.gear.map((one) => ({ id: one.id, piece: pieceOf(garage, one, asOf) }));
  const events = garage.events.map(({ id, event: each }) => ({
    id,
    event: eventInput.parse(each),
  }));
  return {
    book,
    parts: pieces
      .map(({ piece }) => piece)
      .filter(({ result }) => result?.life?.fitted?.car === car.id),
    drivers: pieces.filter(({ id }) => people.includes(id)).map(({ piece }) => piece),
    past: pastEventsOf(car.id, events, book.entries, asOf),
    acceptances: [],
    saidIn: { distance: car.car.unit, volume: garage.garage.volumeUnit },
  };
}
