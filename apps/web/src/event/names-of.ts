import type { Person } from './Crew.tsx';
import type { NamesOf } from './event-fields.ts';

/** @param names of cars and people that are spoken of, by id; @param people everybody of the garage */
export function namesOf(
  names: Readonly<Record<string, string>>,
  people: readonly Person[],
): NamesOf {
  return {
    car: (id) => names[id] ?? 'another car',
    person: (id) =>
      people.find(({ gearId }) => gearId === id)?.name ?? names[id] ?? 'somebody who has left',
  };
}
