import { addDays } from '@quartermark/engine/calendar';
import type { EventDraft, Requirements } from '@quartermark/engine/log';
import { usualRequirements } from '@quartermark/engine/readiness';
import { CLUB } from './club.ts';
import { PIECE } from './gear.ts';
import { carId, eventId, gearId, layUpId } from './record-id.ts';
import type { SeedGarage } from './seed-garage.ts';

const crew = (car: number, ...people: number[]) => ({
  car: carId(car),
  people: people.map(gearId),
});
const oneWay = (text: string) => ({ text, unit: 'km' as const });

/** What the invented circuit asks: limits that matter there, by its own house rules. */
function askedAtTheCircuit(edition: string): Requirements {
  return {
    ...usualRequirements('circuit'),
    limitsOf: ['engineOil', 'oilFilter', 'brakeFluid', 'pads', 'tyres', 'wheelFasteners'],
    rules: { name: `House rules of ${CLUB.circuit}`, edition },
  };
}

/** What the invented club has on its calendar, and what is over. */
export function clubCalendar(day: string): SeedGarage['events'] {
  const on = (offset: number) => addDays(day, offset);
  const events: EventDraft[] = [
    { name: 'Evening meet', sort: 'meet', start: on(-10), place: 'the yard' },
    {
      name: 'Circuit day',
      sort: 'circuit',
      start: on(5),
      place: CLUB.circuit,
      cars: [carId(1), carId(7), carId(4), carId(8)],
      use: { sessions: 4 },
      attend: 1,
      crew: [
        crew(1, PIECE.oda, PIECE.tam),
        crew(7, PIECE.yselt),
        crew(4, PIECE.tam),
        crew(8, PIECE.perrin),
      ],
      travel: { distance: oneWay('60'), trailered: [carId(7)] },
      requirements: askedAtTheCircuit(on(-150)),
    },
    {
      name: 'Drag-strip evening',
      sort: 'dragStrip',
      start: on(12),
      place: CLUB.dragStrip,
      cars: [carId(2)],
      use: { launches: 6 },
      crew: [crew(2, PIECE.oda)],
      travel: { distance: oneWay('45') },
    },
    {
      name: 'Autocross, third round',
      sort: 'autocross',
      start: on(20),
      place: CLUB.autocross,
      cars: [carId(4), carId(8)],
      use: { sessions: 1 },
      attend: 0.5,
      crew: [crew(4, PIECE.yselt), crew(8, PIECE.perrin)],
      travel: { distance: oneWay('18') },
    },
    {
      name: 'Four days over the passes',
      sort: 'roadTrip',
      start: on(39),
      end: on(42),
      cars: [carId(8)],
      use: { distance: { text: '1,100', unit: 'km' } },
      crew: [crew(8, PIECE.perrin, PIECE.oda)],
    },
    // over: the first three are in the cars' own books, of the last nobody has written anything
    { name: 'Circuit day', sort: 'circuit', start: on(-16), place: CLUB.circuit, cars: [carId(1)] },
    { name: 'Circuit day', sort: 'circuit', start: on(-9), place: CLUB.circuit, cars: [carId(7)] },
    {
      name: 'Autocross, second round',
      sort: 'autocross',
      start: on(-8),
      place: CLUB.autocross,
      cars: [carId(4), carId(8)],
    },
    {
      name: 'Drag-strip evening',
      sort: 'dragStrip',
      start: on(-22),
      place: CLUB.dragStrip,
      cars: [carId(2)],
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
