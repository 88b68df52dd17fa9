import { setImmediate } from 'node:timers/promises';
import { listAcceptances, listTicks, namesOf, SOMEBODY_GONE, type TickRow } from '@quartermark/db';
import { eventDays } from '@quartermark/engine/log';
import { type ProposedUse, usualRequirements, workList } from '@quartermark/engine/readiness';
import type { EventCar, EventPage, TickView } from '../../event-views.ts';
import type { EventView } from '../../views.ts';
import { proposedUse } from '../propose.ts';
import { carOfEvent } from './car-of-event.ts';
import type { Room } from './room.ts';

/** Everything about one event, worked out now. */
export async function eventPageOf(room: Room, view: EventView): Promise<EventPage> {
  const { tx, garage, pieces, asks, world } = room;
  const { eventId, event } = view;
  const [ticks, acceptances] = await Promise.all([
    listTicks(tx, garage.id, [eventId]),
    listAcceptances(tx, garage.id, [eventId]),
  ]);
  const people = [...ticks.map(({ by }) => by), ...acceptances.map((one) => one.acceptedBy)];
  const names = await namesOf(tx, garage.id, people);
  const cars: EventCar[] = [];
  for (const carId of event.cars) {
    const car = await carOfEvent(room, view, carId, { acceptances, names });
    if (car) cars.push(car);
    // forty cars take a while: others are answered in between
    await setImmediate();
  }
  const persons = pieces.filter(({ row }) => row.kind === 'person');
  return {
    at: world.clock.now().toISOString(),
    garage,
    event: view,
    requirements: {
      own: event.requirements ?? null,
      garage: asks.get(event.sort) ?? null,
      usual: usualRequirements(event.sort),
    },
    cars,
    work: workList(cars.flatMap(({ readiness }) => readiness ?? [])),
    ticks: ticks.map((tick) => tickViewOf(tick, names)),
    people: persons
      .map(({ row }) => ({ gearId: row.id, name: row.body.name }))
      .sort((a, b) => a.name.localeCompare(b.name, 'en') || a.gearId.localeCompare(b.gearId)),
    proposal: await proposalAt(room, view),
    names: namesIn(room, cars),
    former: lastBefore(room, view),
  };
}

/** Nothing is proposed where the event says a use. */
async function proposalAt({ tx, garage }: Room, { event }: EventView): Promise<ProposedUse | null> {
  const { sort, use = {}, cars } = event;
  if (Object.values(use).some((amount) => amount !== undefined)) return null;
  return proposedUse(tx, garage, { sort, days: eventDays(event), carId: cars[0] ?? null });
}

/** The last event of the same sort that is over, but for this one. */
function lastBefore({ events, garage }: Room, { eventId, event }: EventView): EventView | null {
  const over = events.filter(
    (one) =>
      one.eventId !== eventId && one.event.sort === event.sort && lastDay(one) < garage.today,
  );
  return over.reduce<EventView | null>(
    (last, one) => (last === null || lastDay(one) >= lastDay(last) ? one : last),
    null,
  );
}

const lastDay = ({ event: { start, end = start } }: EventView) => end;

function tickViewOf(tick: TickRow, names: ReadonlyMap<string, string>): TickView {
  const { id: tickId, carId, line, done, by, at, madeAt } = tick;
  return {
    tickId,
    carId,
    line,
    done,
    by: names.get(by) ?? SOMEBODY_GONE,
    at: at.toISOString(),
    madeAt: madeAt.toISOString(),
  };
}

/** Names of the cars and their items, and of all pieces and people with theirs. */
function namesIn({ pieces }: Room, cars: readonly EventCar[]): Record<string, string> {
  return Object.fromEntries([
    ...cars.map(({ carId, name }) => [carId, name]),
    ...cars.flatMap(({ items }) => items.map(({ id, item }) => [id, item.name])),
    ...pieces.map(({ row }) => [row.id, row.body.name]),
    ...pieces.flatMap(({ items }) => items.map(({ id, body }) => [id, body.name])),
  ]);
}
