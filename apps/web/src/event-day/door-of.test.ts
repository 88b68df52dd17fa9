import { expect, test } from 'vitest';
import { debriefOf, doorOf } from './door-of.ts';

const where = { garageId: 'g', eventId: 'e', carId: 'c', names: { p: 'Front pads' } };

test('doorOf() leads to the form of the car with what it is about filled in', () => {
  expect(doorOf({ at: 'entry', kind: 'service', item: 'i-1' }, where)).toEqual({
    href: '/g/g/record/c/service?item=i-1',
    words: 'Record it: service',
  });
  expect(doorOf({ at: 'entry', kind: 'measure', component: 'p' }, where).href).toBe(
    '/g/g/record/c/measure?component=p',
  );
  expect(doorOf({ at: 'entry', kind: 'answer', notice: 'n' }, where).href).toBe(
    '/g/g/record/c/answer?notice=n',
  );
  expect(doorOf({ at: 'entry', kind: 'oilCheck' }, where).href).toBe('/g/g/record/c/oilCheck');
});

test('doorOf() leads to the event, a new item, or a set, tool or person by name', () => {
  expect(doorOf({ at: 'event' }, where).href).toBe('/g/g/events/e/change');
  expect(doorOf({ at: 'event' }, { ...where, eventId: null }).href).toBe('/g/g/events');
  expect(doorOf({ at: 'item' }, where).href).toBe('/g/g/car/c/item/add');
  expect(doorOf({ at: 'gear', gear: 'p' }, where)).toEqual({
    href: '/g/g/gear/p',
    words: 'Open Front pads',
  });
  expect(doorOf({ at: 'gear', gear: 'gone' }, where).words).toBe('Open it');
});

test('debriefOf() leads to the debrief of the event that is over, and nowhere for other needs', () => {
  expect(debriefOf(['lastEvent:e-1'], where)?.href).toBe('/g/g/events/e-1/debrief');
  expect(debriefOf(['lastEvent', 'limit:i'], where)).toBeNull();
});
