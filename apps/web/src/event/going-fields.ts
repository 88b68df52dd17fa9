import {
  type Distance,
  distance as distanceSchema,
  type EventInput,
} from '@quartermark/engine/log';
import type { Problems } from '../items/limit-fields.ts';

/** What the form holds of who drives what, by the car's id; cars that do not go stay, and are not read. */
export type CrewFields = Record<string, string[]>;

/** What the form holds of the way there. */
export type TravelFields = { distance: string; unit: Distance['unit']; trailered: string[] };

export function crewFields({ crew = [] }: Pick<EventInput, 'crew'>): CrewFields {
  return Object.fromEntries(crew.map(({ car, people }) => [car, [...people]]));
}

/** @param unit in which a distance is typed, where none was yet */
export function travelFields(
  { travel }: Pick<EventInput, 'travel'>,
  unit: Distance['unit'],
): TravelFields {
  return {
    distance: travel?.distance?.text ?? '',
    unit: travel?.distance?.unit ?? unit,
    trailered: [...(travel?.trailered ?? [])],
  };
}

type Going = { cars: readonly string[]; crew: CrewFields };

/** Who drives, of the cars that go; undefined where nobody was said. */
export function readCrew({ cars, crew }: Going): EventInput['crew'] {
  const said = cars.flatMap((car) => {
    const people = crew[car] ?? [];
    return people.length === 0 ? [] : [{ car, people }];
  });
  return said.length === 0 ? undefined : said;
}

/** The way there; undefined where nothing was said. What cannot be read is added to `problems`. */
export function readTravel(
  { cars, travel }: { cars: readonly string[]; travel: TravelFields },
  problems: Problems,
): EventInput['travel'] {
  const trailered = travel.trailered.filter((id) => cars.includes(id));
  if (travel.distance.trim() === '') return trailered.length === 0 ? undefined : { trailered };
  const distance = { text: travel.distance, unit: travel.unit };
  const wrong = distanceSchema.safeParse(distance).error?.issues[0];
  if (wrong)
    problems['event.travel.distance.text'] =
      wrong.message.charAt(0).toUpperCase() + wrong.message.slice(1);
  return { distance, trailered };
}
