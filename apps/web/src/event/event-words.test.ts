import type { EventInput } from '@quartermark/engine/log';
import { expect, test } from 'vitest';
import { eventsAnswer, spanWords, splitEvents, whenWords } from './event-words.ts';

const TODAY = '2026-06-15';
const on = (name: string, start: string, end?: string): { event: EventInput } => ({
  event: {
    name,
    sort: 'circuit',
    start,
    cars: [],
    attend: 0.9,
    ...(end === undefined ? {} : { end }),
  },
});

test('spanWords() says a month and a year once where they are the same', () => {
  expect(spanWords({ start: '2026-06-20' })).toBe('20 June 2026');
  expect(spanWords({ start: '2026-06-20', end: '2026-06-20' })).toBe('20 June 2026');
  expect(spanWords({ start: '2026-07-24', end: '2026-07-27' })).toBe('24 to 27 July 2026');
  expect(spanWords({ start: '2026-07-30', end: '2026-08-02' })).toBe('30 July to 2 August 2026');
  expect(spanWords({ start: '2026-12-30', end: '2027-01-02' })).toBe(
    '30 December 2026 to 2 January 2027',
  );
});

test('whenWords() counts to the first day, and back from the last', () => {
  expect(whenWords({ start: '2026-06-20' }, TODAY)).toBe('in 5 days');
  expect(whenWords({ start: '2026-06-16' }, TODAY)).toBe('tomorrow');
  expect(whenWords({ start: '2026-06-13', end: '2026-06-15' }, TODAY)).toBe('on now');
  expect(whenWords({ start: '2026-06-10', end: '2026-06-12' }, TODAY)).toBe('3 days ago');
});

test('splitEvents() puts what comes first by its day, what is over last by the newest', () => {
  const events = [
    on('Late', '2026-07-01'),
    on('Gone', '2026-05-20'),
    on('Running', '2026-06-14', '2026-06-15'),
    on('Just gone', '2026-06-14'),
  ];
  const { coming, past } = splitEvents(events, TODAY);
  expect(coming.map(({ event }) => event.name)).toEqual(['Running', 'Late']);
  expect(past.map(({ event }) => event.name)).toEqual(['Just gone', 'Gone']);
});

test('eventsAnswer() names what is on, else what is next and in how many days', () => {
  expect(eventsAnswer([], TODAY)).toBe('Nothing that comes is on the calendar.');
  expect(eventsAnswer([on('Meet', '2026-06-14')], TODAY)).toContain('Nothing that comes');
  expect(eventsAnswer([on('B', '2026-07-01'), on('A', '2026-06-20')], TODAY)).toBe(
    'Next is A, in 5 days: 20 June 2026.',
  );
  expect(eventsAnswer([on('A', '2026-06-15')], TODAY)).toBe('A is on today.');
  expect(eventsAnswer([on('A', '2026-06-15', '2026-06-17')], TODAY)).toBe(
    'A is on, until 17 June 2026.',
  );
});
