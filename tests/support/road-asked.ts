import type { RoadAsked } from '@quartermark/db';
import type { Book } from '@quartermark/engine/log';
import { usualRequirements } from '@quartermark/engine/readiness';

/** A car of which no more is known than its book, asked what is usual for the road. */
export function roadAsked(book: Book): RoadAsked {
  return {
    car: {
      book,
      parts: [],
      drivers: [],
      past: [],
      acceptances: [],
      saidIn: { distance: book.car.unit, volume: 'l' },
    },
    requirements: usualRequirements('road'),
  };
}
