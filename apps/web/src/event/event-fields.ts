import type { EventDraft, EventInput, EventSort } from '@quartermark/engine/log';
import type { VersionLine } from '../items/item-lines.ts';
import type { Problems } from '../items/limit-fields.ts';
import { EVENT_NAME, spanWords } from './event-words.ts';

/** What the form of an event holds: everything as typed. */
export type EventFields = {
  /** revision the fields were taken from; 0 for a new one */
  baseRevision: number;
  name: string;
  sort: EventSort;
  start: string;
  end: string;
  place: string;
  cars: string[];
};

export function emptyEvent(): EventFields {
  return { baseRevision: 0, name: '', sort: 'circuit', start: '', end: '', place: '', cars: [] };
}

/** A stored event as its form shows it. */
export function eventFields(event: EventInput, revision: number): EventFields {
  const { name, sort, start, end = '', place = '', cars } = event;
  return { baseRevision: revision, name, sort, start, end, place, cars: [...cars] };
}

/** What is wrong with the form's fields, by the path the server would name. */
export function readEvent(fields: EventFields): { event: EventDraft } | { problems: Problems } {
  const { name, sort, start, end, place, cars } = fields;
  const problems: Problems = {};
  if (name.trim() === '') problems['event.name'] = 'Fill in a name, such as circuit day.';
  if (start === '') problems['event.start'] = 'Choose the day it begins.';
  if (start !== '' && end !== '' && end < start)
    problems['event.end'] = 'The last day is before the first; swap them or leave it empty.';
  if (Object.keys(problems).length > 0) return { problems };
  return {
    event: {
      name,
      sort,
      start,
      ...(end === '' || end === start ? {} : { end }),
      ...(place.trim() === '' ? {} : { place }),
      cars,
    },
  };
}

/** An event in words, a line for each thing its form can change. @param carName of a car's id */
export function eventLines(event: EventInput, carName: (id: string) => string): VersionLine[] {
  return [
    { label: 'Name', words: event.name },
    { label: 'Sort', words: EVENT_NAME[event.sort] },
    { label: 'Days', words: spanWords(event) },
    { label: 'Place', words: event.place ?? 'Not said' },
    { label: 'Cars', words: carsWords(event.cars, carName) },
  ];
}

/** The cars that go. @example carsWords([], name) // "not said yet" */
export function carsWords(cars: readonly string[], carName: (id: string) => string): string {
  return cars.length === 0 ? 'not said yet' : cars.map(carName).join(', ');
}
