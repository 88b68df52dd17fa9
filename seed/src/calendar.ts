import { addDays } from '@quartermark/engine/calendar';
import type { EventDraft } from '@quartermark/engine/log';
import { CLUB } from './club.ts';
import { carId, eventId, layUpId } from './record-id.ts';
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
      use: { sessions: 4 },
      attend: 1,
    },
    {
      name: 'Drag-strip evening',
      sort: 'dragStrip',
      start: on(12),
      place: CLUB.dragStrip,
      cars: [carId(2)],
      use: { launches: 6 },
    },
    {
      name: 'Autocross, third round',
      sort: 'autocross',
      start: on(20),
      place: CLUB.autocross,
      cars: [carId(4), carId(8)],
      use: { sessions: 1 },
      attend: 0.5,
    },
    {
      name: 'Four days over the passes',
      sort: 'roadTrip',
      start: on(39),
      end: on(42),
      cars: [carId(8)],
      use: { distance: { text: '1,100', unit: 'km' } },
    },
  ];
  return events.map((event, index) => ({ id: eventId(index + 1), event }));
}

/** Lay-ups that the club means to make in the winter that comes next. */
export function clubWinter(day: string): SeedGarage['plannedLayUps'] {
  const year = Number(day.slice(0, 4)) + (day < `${day.slice(0, 4)}-11-01` ? 0 : 1);
  return [
    {
      id: layUpId(1),
      carId: carId(2),
      layUp: { start: `${year}-11-01`, end: `${year + 1}-03-25` },
    },
    // until spring comes: nobody has said when
    { id: layUpId(2), carId: carId(7), layUp: { start: `${year}-11-15` } },
  ];
}
