import { expect, test } from 'vitest';
import { factParts, factWords } from './fact-words.ts';

const names = {
  cars: { 'c-1': 'Tarnfell Corvo' },
  items: { 'i-1': 'Brake fluid' },
  events: { 'e-1': 'Autumn circuit day' },
};

test('factWords() names the car and the item, whenever it was last done', () => {
  expect(factWords('c-1/overdue/i-1:2026-01-10', names)).toBe(
    'Tarnfell Corvo: Brake fluid, overdue',
  );
  expect(factWords('c-1/dueSoon/i-1:never', names)).toBe('Tarnfell Corvo: Brake fluid, due soon');
  expect(factWords('c-1/verdict/e-1', names)).toContain('ready for Autumn circuit day');
});

test('factWords() says what has left instead of an id', () => {
  expect(factWords('c-2/overdue/i-2:never', names)).toBe(
    'A car that has left: an item no longer watched, overdue',
  );
  expect(factWords('c-1/verdict/e-9', names)).toContain('no longer on the calendar');
  expect(factWords('nonsense', names)).toBe('Something this garage does not know');
});

test('factParts() keeps slashes of the subject', () => {
  expect(factParts('c-1/oilNotice/low/at/c')).toEqual({
    car: 'c-1',
    kind: 'oilNotice',
    subject: 'low/at/c',
  });
  expect(factParts('c-1/overdue')).toBeNull();
});
