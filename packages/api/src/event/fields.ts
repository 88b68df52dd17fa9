import { listCarIds, listGear, namesOfThings } from '@quartermark/db';
import type { EventInput } from '@quartermark/engine/log';
import type { Writing } from '../command/run-command.ts';
import { badField } from '../refused.ts';

/**
 * Cars that go are cars of this garage; who drives is somebody of this garage, in a car that goes; what is
 * trailered goes.
 *
 * @throws Refused `badInput` at the field
 */
export async function checkEvent(writing: Writing, event: EventInput): Promise<void> {
  const { tx, garage } = writing;
  const known = new Set(await listCarIds(tx, garage.id));
  for (const [index, carId] of event.cars.entries())
    if (!known.has(carId))
      throw badField(
        `event.cars.${index}`,
        `cars: ${carId} is no car of this garage; choose from its list`,
      );
  await checkCrew(writing, event);
  await checkTrailered(writing, event);
}

async function checkCrew(writing: Writing, { crew = [], cars }: EventInput): Promise<void> {
  if (crew.length === 0) return;
  const pieces = await listGear(writing.tx, writing.garage.id);
  const persons = new Set(pieces.flatMap(({ kind, id }) => (kind === 'person' ? id : [])));
  const seen = new Set<string>();
  for (const [index, { car, people }] of crew.entries()) {
    const field = `event.crew.${index}`;
    if (!cars.includes(car))
      throw badField(
        `${field}.car`,
        `crew: ${await called(writing, car)} does not go to this event; add it to the cars that go, or take its drivers off`,
      );
    if (seen.has(car))
      throw badField(
        `${field}.car`,
        `crew: ${await called(writing, car)} is named twice; put all who drive it into one line`,
      );
    seen.add(car);
    for (const [at, person] of people.entries()) {
      if (!persons.has(person))
        throw badField(
          `${field}.people.${at}`,
          `crew: ${person} is nobody of this garage; choose from its people, or add the person first`,
        );
      if (people.indexOf(person) !== at)
        throw badField(
          `${field}.people.${at}`,
          `crew: ${await called(writing, person)} is named twice in one car; take one away`,
        );
    }
  }
}

async function checkTrailered(writing: Writing, { travel, cars }: EventInput): Promise<void> {
  for (const [index, car] of (travel?.trailered ?? []).entries())
    if (!cars.includes(car))
      throw badField(
        `event.travel.trailered.${index}`,
        `trailered: ${await called(writing, car)} does not go to this event; add it to the cars that go, or take it off the trailer`,
      );
}

/** The name of what is of this garage; its id where it is not. */
async function called({ tx, garage }: Writing, id: string): Promise<string> {
  return UUID.test(id) ? ((await namesOfThings(tx, garage.id, [id]))[id] ?? id) : id;
}

const UUID = /^[\da-f]{8}(-[\da-f]{4}){3}-[\da-f]{12}$/i;
