import {
  ATTEND_USUAL,
  type Distance,
  type EventDraft,
  type EventInput,
  type EventSort,
} from '@quartermark/engine/log';
import type { VersionLine } from '../forms/version-rows.ts';
import type { Problems } from '../items/limit-fields.ts';
import {
  type RequirementFields,
  readRequirements,
  requirementFields,
} from '../requirements/requirement-fields.ts';
import { requirementLines } from '../requirements/requirement-lines.ts';
import { EVENT_NAME, spanWords } from './event-words.ts';
import {
  type CrewFields,
  crewFields,
  readCrew,
  readTravel,
  type TravelFields,
  travelFields,
} from './going-fields.ts';
import { crewWords, travelWords } from './going-words.ts';
import { plannedUseFields, readUse, type UseFields, usualUseFields } from './planned-use-fields.ts';
import { attendWords, plannedUseWords } from './planned-use-words.ts';

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
  use: UseFields;
  /** how likely they go, 0..1 as text */
  attend: string;
  crew: CrewFields;
  travel: TravelFields;
  /** null: what the garage asks counts */
  requirements: RequirementFields | null;
};

/** @param unit in which distances are proposed, where none was typed yet */
export function emptyEvent(unit: Distance['unit']): EventFields {
  return {
    baseRevision: 0,
    name: '',
    sort: 'circuit',
    start: '',
    end: '',
    place: '',
    cars: [],
    use: usualUseFields(unit),
    attend: String(ATTEND_USUAL),
    crew: {},
    travel: travelFields({}, unit),
    requirements: null,
  };
}

/** A stored event as its form shows it. @param unit as in `emptyEvent` */
export function eventFields(
  event: EventInput,
  revision: number,
  unit: Distance['unit'],
): EventFields {
  const { name, sort, start, end = '', place = '', cars, attend, requirements } = event;
  return {
    baseRevision: revision,
    name,
    sort,
    start,
    end,
    place,
    cars: [...cars],
    use: plannedUseFields(event, unit),
    attend: String(attend),
    crew: crewFields(event),
    travel: travelFields(event, unit),
    requirements: requirements === undefined ? null : requirementFields(requirements),
  };
}

/** What is wrong with the form's fields, by the path the server would name. */
export function readEvent(fields: EventFields): { event: EventDraft } | { problems: Problems } {
  const { name, sort, start, end, place, cars, attend } = fields;
  const problems: Problems = {};
  if (name.trim() === '') problems['event.name'] = 'Fill in a name, such as circuit day.';
  if (start === '') problems['event.start'] = 'Choose the day it begins.';
  if (start !== '' && end !== '' && end < start)
    problems['event.end'] = 'The last day is before the first; swap them or leave it empty.';
  const use = readUse(fields, problems);
  const crew = readCrew(fields);
  const travel = readTravel(fields, problems);
  const asked = fields.requirements;
  const requirements =
    asked === null ? null : readRequirements(asked, 'event.requirements', problems);
  if (Object.keys(problems).length > 0) return { problems };
  return {
    event: {
      name,
      sort,
      start,
      ...(end === '' || end === start ? {} : { end }),
      ...(place.trim() === '' ? {} : { place }),
      cars,
      ...(use === undefined ? {} : { use }),
      attend: Number(attend),
      ...(crew === undefined ? {} : { crew }),
      ...(travel === undefined ? {} : { travel }),
      ...(requirements === null ? {} : { requirements }),
    },
  };
}

/** Names by id. */
export type NamesOf = { car: (id: string) => string; person: (id: string) => string };

/** An event in words, a line for each thing its form can change. */
export function eventLines(event: EventInput, { car, person }: NamesOf): VersionLine[] {
  return [
    { label: 'Name', words: event.name },
    { label: 'Sort', words: EVENT_NAME[event.sort] },
    { label: 'Days', words: spanWords(event) },
    { label: 'Place', words: event.place ?? 'Not said' },
    { label: 'Cars', words: carsWords(event.cars, car) },
    { label: 'Who drives', words: crewWords(event, car, person) },
    { label: 'The way there', words: travelWords(event, car) },
    { label: 'What each car does', words: plannedUseWords(event.use) },
    { label: 'How likely', words: attendWords(event.attend) },
    { label: 'What it asks', words: asksWords(event) },
  ];
}

/** Of requirements of its own, all of them in one line: two versions may differ in any. */
function asksWords({ requirements }: EventInput): string {
  if (requirements === undefined) return 'what the garage asks';
  const lines = requirementLines(requirements).map(({ label, words }) => `${label}: ${words}`);
  return `its own. ${lines.join('. ')}`;
}

/** The cars that go. @example carsWords([], name) // "not said yet" */
export function carsWords(cars: readonly string[], carName: (id: string) => string): string {
  return cars.length === 0 ? 'not said yet' : cars.map(carName).join(', ');
}
