import { expect, test } from 'vitest';
import { doorOf } from './door-of.ts';

const at = { garageId: 'g1', carId: 'c1', eventId: null };
const href = (record: Parameters<typeof doorOf>[0], eventId: string | null = null) =>
  doorOf(record, { ...at, eventId })?.href ?? null;

test('doorOf() leads to the form that writes it down, filled with what is known', () => {
  expect(href({ at: 'entry', kind: 'odometer' })).toBe('/g/g1/record/c1/odometer');
  expect(href({ at: 'entry', kind: 'service', item: 'i1' })).toBe(
    '/g/g1/record/c1/service?item=i1',
  );
  expect(href({ at: 'entry', kind: 'measure', component: 'p1' })).toBe(
    '/g/g1/record/c1/measure?component=p1',
  );
  expect(href({ at: 'entry', kind: 'answer', notice: 'useRisen:e 1' })).toBe(
    '/g/g1/record/c1/answer?notice=useRisen%3Ae+1',
  );
  expect(href({ at: 'item' })).toBe('/g/g1/car/c1/item/add');
  expect(href({ at: 'gear', gear: 'p1' })).toBe('/g/g1/gear/p1');
});

test('doorOf() leads to the form of an event where there is one, and nowhere without a place', () => {
  expect(href({ at: 'event' }, 'e1')).toBe('/g/g1/events/e1/change');
  expect(href({ at: 'event' })).toBeNull();
  expect(href(null)).toBeNull();
});
