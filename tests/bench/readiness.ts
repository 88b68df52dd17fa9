import { type EventDraft, eventInput } from '@quartermark/engine/log';
import {
  assess,
  type CarAsked,
  carReadiness,
  type EventAsked,
  knownOf,
  usualRequirements,
} from '@quartermark/engine/readiness';
import { demoGarage } from '@quartermark/seed';
import { bookOf } from '../../seed/src/book-of.ts';
import type { Finding } from './finding.ts';
import { type Times, timed } from './statistics.ts';

const CARS = 20;
const ROUNDS = 12;
const WARM_UP = 3;
const TODAY = '2026-06-15';

const EVENTS: EventDraft[] = [
  { name: 'Circuit day', sort: 'circuit', start: '2026-06-20', use: { sessions: 4 } },
  { name: 'Drag-strip evening', sort: 'dragStrip', start: '2026-06-27', use: { launches: 6 } },
  {
    name: 'Over the passes',
    sort: 'roadTrip',
    start: '2026-07-20',
    end: '2026-07-24',
    use: { distance: { text: '1,100', unit: 'km' } },
  },
];

type Case = { car: CarAsked; event: NonNullable<EventAsked> };

/** The demo garage's cars, over and over, each at each event. */
function cases(): Case[] {
  const garage = demoGarage(TODAY);
  const books = garage.cars.map((car) => bookOf(garage, car, TODAY));
  return Array.from(
    { length: CARS },
    (_, at) => books[at % books.length] as CarAsked['book'],
  ).flatMap((book) =>
    EVENTS.map(
      (event, at): Case => ({
        car: {
          book,
          parts: [],
          drivers: [],
          past: [],
          acceptances: [],
          saidIn: { distance: book.car.unit, volume: 'l' },
        },
        event: { id: `e${at}`, event: eventInput.parse({ ...event, cars: [book.car.id] }) },
      }),
    ),
  );
}

/** Readiness of 20 cars for three events, beside the same rules over what is known of them already. */
export async function readinessFinding(): Promise<Finding> {
  const all = cases();
  const known = all.map(({ car, event }) =>
    knownOf(car, event, usualRequirements(event.event.sort)),
  );
  const [took, bare]: [Times, Times] = [[], []];
  let needs = 0;
  for (let round = 0; round < WARM_UP + ROUNDS; round += 1) {
    const whole = await timed(() => {
      for (const { car, event } of all)
        needs += carReadiness(car, event, usualRequirements(event.event.sort)).needs.length;
    });
    const rules = await timed(() => {
      for (const one of known) needs += assess(one).needs.length;
    });
    if (round < WARM_UP) continue;
    took.push(whole);
    bare.push(rules);
  }
  if (!(needs > 0)) throw new Error('nothing was asked of any car');
  return {
    what: `readiness of ${CARS} cars for ${EVENTS.length} events, their books worked out anew`,
    took,
    beside: { what: 'the same rules alone, over what is known of the cars already', took: bare },
    // working the books out is by far the greater part, and none of it is stored
    goal: { ratio: 30 },
  };
}
