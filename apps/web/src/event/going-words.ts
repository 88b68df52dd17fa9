import type { EventInput } from '@quartermark/engine/log';

type NameOf = (id: string) => string;

/** Who drives what. @example crewWords(event, car, person) // "Finch: Ann, Bo; Otter: Ann" */
export function crewWords(
  { crew = [] }: Pick<EventInput, 'crew'>,
  carName: NameOf,
  personName: NameOf,
): string {
  if (crew.length === 0) return 'not said yet';
  return crew
    .map(({ car, people }) => `${carName(car)}: ${people.map(personName).join(', ')}`)
    .join('; ');
}

/** The way there. @example travelWords(event, car) // "120 km each way; Finch on a trailer, others driven" */
export function travelWords(
  { cars, travel }: Pick<EventInput, 'cars' | 'travel'>,
  carName: NameOf,
): string {
  if (travel === undefined) return 'not said yet';
  const { distance, trailered } = travel;
  const far =
    distance === undefined ? 'distance not said' : `${distance.text} ${distance.unit} each way`;
  return `${far}; ${howWords(cars, trailered, carName)}`;
}

function howWords(cars: readonly string[], trailered: readonly string[], carName: NameOf): string {
  const on = trailered.filter((id) => cars.includes(id));
  if (on.length === 0) return 'driven';
  const names = `${on.map(carName).join(', ')} on a trailer`;
  return on.length === cars.length ? names : `${names}, others driven`;
}
