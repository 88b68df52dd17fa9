import { addDays } from '@quartermark/engine/calendar';
import type { EventDraft } from '@quartermark/engine/log';
import { CLUB } from './club.ts';
import { carId, eventId } from './record-id.ts';
import type { SeedGarage } from './seed-garage.ts';

/** What the invented club has on its calendar. */
export function clubCalendar(day: string): SeedGarage['events'] {
  const on = (offset: number) => addDays(day, offset);
  const events: EventDraft[] = [
    { name: 'Evening meet', sort: 'meet', start: on(-10), place: 'the yard' },
    {
      name: 'Circuit day',
      sort: 'circuit',
      start: on(5),
      place: CLUB.circuit,
      cars: [carId(1), carId(7)],
    },
    {
      name: 'Drag-strip evening',
      sort: 'dragStrip',
      start: on(12),
      place: CLUB.dragStrip,
      cars: [carId(2)],
    },
    {
      name: 'Autocross, third round',
      sort: 'autocross',
      start: on(20),
      place: CLUB.autocross,
      cars: [carId(4), carId(8)],
    },
    {
      name: 'Four days over the passes',
      sort: 'roadTrip',
      start: on(39),
      end: on(42),
      cars: [carId(8)],
    },
  ];
  return events.map((event, index) => ({ id: eventId(index + 1), event }));
}
