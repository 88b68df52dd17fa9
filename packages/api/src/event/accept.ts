import {
  carAsked,
  insertAcceptance,
  listAcceptances,
  namesOf,
  readEvent,
  readinessAt,
  tellGarage,
} from '@quartermark/db';
import { acceptance } from '@quartermark/engine/log';
import type { CarReadiness } from '@quartermark/engine/readiness';
import { z } from 'zod';
import { commandFields, id } from '../asked.ts';
import { runCommand, type Writing } from '../command/run-command.ts';
import { badField, notFoundHere, refuse } from '../refused.ts';
import type { EventView, Written } from '../views.ts';
import type { Asker, World } from '../world.ts';
import { openRoom } from './page/room.ts';
import { eventViewOf } from './view-of.ts';

export const acceptNeedInput = z.strictObject({
  ...commandFields,
  acceptanceId: id,
  acceptance: acceptance.extend({ event: id, car: id }),
});

type AcceptNeed = z.output<typeof acceptNeedInput>;

/**
 * Somebody takes a need of a car upon himself for one event. It is worked out now whether the need is
 * there and may be accepted: what forbids driving never may.
 */
export function acceptNeed(world: World, asker: Asker, input: AcceptNeed): Promise<Written> {
  return runCommand(world, asker, 'event.accept', input, async (writing) => {
    const { tx, garage, now, by } = writing;
    const { acceptanceId, acceptance } = input;
    const view = await eventOf(writing, acceptance);
    checkNeed(await readinessNow(world, writing, view, acceptance.car), acceptance.need);
    const made = { garageId: garage.id, id: acceptanceId, acceptance, at: now, by };
    if (!(await insertAcceptance(tx, made)))
      throw refuse('idInUse', 'acceptanceId', 'This was accepted before; reload the page.');
    await tellGarage(tx, garage.id);
    return { id: acceptanceId, revision: 1, version: 0 };
  });
}

async function eventOf(
  { tx, garage }: Writing,
  { event, car }: AcceptNeed['acceptance'],
): Promise<EventView> {
  const row = await readEvent(tx, garage.id, event);
  if (!row) throw notFoundHere('event', 'acceptance.event');
  if (row.removedAt)
    throw refuse('removed', 'acceptance.event', 'This event was taken off the calendar.');
  const view = eventViewOf(row);
  if (!view.event.cars.includes(car))
    throw badField(
      'acceptance.car',
      'car: does not go to this event; add it to the cars that go first',
    );
  return view;
}

async function readinessNow(
  world: World,
  { tx, garage }: Writing,
  view: EventView,
  carId: string,
): Promise<CarReadiness> {
  const room = await openRoom(world, tx, garage.id);
  if (!room) throw notFoundHere('event', 'acceptance.event');
  const acceptances = await listAcceptances(tx, garage.id, [view.eventId]);
  const names = await namesOf(
    tx,
    garage.id,
    acceptances.map((one) => one.acceptedBy),
  );
  const car = await carAsked(room, view, carId, { acceptances, names });
  if (car === null)
    throw badField(
      'acceptance.car',
      'car: a part of its log cannot be read, so nothing can be said of it; mend that first',
    );
  return readinessAt(room, view, car);
}

/** @throws Refused where the need is not there, is met, is accepted already or may not be accepted */
function checkNeed({ needs }: CarReadiness, id: string): void {
  const need = needs.find((one) => one.id === id);
  const not = (why: string) => badField('acceptance.need', `need: ${why}`);
  if (need === undefined)
    throw not('is not asked of this car for this event any more; reload the page');
  if (need.accepted !== null)
    throw not(`${need.accepted.by} took this on already; withdraw that first to say it anew`);
  if (need.status === 'met') throw not('is met, so there is nothing to take on; reload the page');
  if (!need.mayAccept)
    throw not(`nobody can take this on: ${need.title}. Put it right and record it`);
}
