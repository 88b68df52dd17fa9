import { expect, test } from 'vitest';
import type { Link } from '../letter/letter.ts';
import { linkAddress } from './link-address.ts';

const path = (link: Link) => linkAddress('', 'g1')(link);

test('linkAddress() names every item that a form is filled in with', () => {
  expect(path({ to: 'serviceForm', car: 'c1', items: ['i1', 'i2'] })).toBe(
    '/g/g1/record/c1/service?item=i1&item=i2',
  );
  expect(path({ to: 'orderForm', car: 'c1', items: ['i1'] })).toBe('/g/g1/car/c1/order?item=i1');
  expect(path({ to: 'oilCheckForm', car: 'c1' })).toBe('/g/g1/record/c1/oilCheck');
});

test('linkAddress() hands facts over whole, whatever stands in them', () => {
  const facts = ['c1/overdue/i1:2026-01-10', 'c1/oilNotice/a&b=c d'];
  const address = path({ to: 'putOffForm', facts, until: '2026-06-20' });
  const { pathname, searchParams } = new URL(address, 'https://garage.example.org');
  expect(pathname).toBe('/g/g1/letters/put-off');
  expect(searchParams.getAll('fact')).toEqual(facts);
  expect(searchParams.get('until')).toBe('2026-06-20');
});

test('linkAddress() stands behind the origin of the house', () => {
  const of = linkAddress('https://garage.example.org', 'g1');
  expect(of({ to: 'car', car: 'c1' })).toBe('https://garage.example.org/g/g1/car/c1');
  expect(of({ to: 'carOil', car: 'c1' })).toBe('https://garage.example.org/g/g1/car/c1/oil');
  expect(of({ to: 'event', event: 'e1' })).toBe('https://garage.example.org/g/g1/events/e1');
  expect(of({ to: 'dueList' })).toBe('https://garage.example.org/g/g1/due');
  expect(of({ to: 'letterSettings' })).toBe('https://garage.example.org/g/g1/letters/settings');
});

test('linkAddress() holds as many as fit, so that a letter of a long line can leave', () => {
  const facts = Array.from(
    { length: 40 },
    (_, at) => `c1/overdue/item-${'x'.repeat(30)}-${at}:never`,
  );
  const address = linkAddress(
    'https://garage.example.org',
    'g1',
  )({
    to: 'putOffForm',
    facts,
    until: '2026-06-20',
  });
  expect(address.length).toBeLessThanOrEqual(800);
  const named = new URL(address).searchParams.getAll('fact');
  expect(named.length).toBeGreaterThan(5);
  expect(named).toEqual(facts.slice(0, named.length));
  expect(new URL(address).searchParams.get('until')).toBe('2026-06-20');
});
