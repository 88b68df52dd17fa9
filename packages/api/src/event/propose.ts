import { listEntriesSince, listEvents, readCar, readGarage, type Tx } from '@quartermark/db';
import { addDays } from '@quartermark/engine/calendar';
import { EVENT_SORTS, type EventSort } from '@quartermark/engine/log';
import {
  type FormerEvent,
  type ProposedUse,
  proposeUse,
  usesOfEvent,
} from '@quartermark/engine/readiness';
import { z } from 'zod';
import { id } from '../asked.ts';
import { inGarage } from '../command/in-garage.ts';
import type { ProposalView } from '../event-views.ts';
import { garageViewOf } from '../garage/view-of.ts';
import { notFoundHere } from '../refused.ts';
import type { GarageView } from '../views.ts';
import type { Asker, World } from '../world.ts';
import { entryOf } from './entry-of.ts';
import { eventViewOf } from './view-of.ts';

export const proposeUseInput = z.strictObject({
  garageId: id,
  sort: z.enum(EVENT_SORTS),
  /** how many the event lasts */
  days: z.int().min(1).max(366),
  /** the car it is proposed for; null: any */
  carId: id.nullable(),
});

/** What was done longer ago says little of what is done now. */
const LOOK_BACK_DAYS = 730;
/** So many of the last events of the sort are looked at. */
const FORMER_MAX = 3;

/** What a car may do at an event of a sort, from what it, or the garage, did at the last ones; else the usual. */
export function proposeUseOf(
  world: World,
  asker: Asker,
  { garageId, sort, days, carId }: z.output<typeof proposeUseInput>,
): Promise<ProposalView> {
  return inGarage(world, asker, garageId, async (tx) => {
    const row = await readGarage(tx, garageId);
    if (!row) throw notFoundHere('garage', 'garageId');
    if (carId !== null && !(await readCar(tx, garageId, carId))) throw notFoundHere('car', 'carId');
    const garage = garageViewOf(row, world.clock.now());
    return { sort, proposal: await proposedUse(tx, garage, { sort, days, carId }) };
  });
}

type Proposed = { sort: EventSort; days: number; carId: string | null };

/** The proposal itself; null: nothing is usual at events of the sort. */
export async function proposedUse(
  tx: Tx,
  { id: garageId, today, distanceUnit }: GarageView,
  { sort, days, carId }: Proposed,
): Promise<ProposedUse | null> {
  const since = addDays(today, -LOOK_BACK_DAYS);
  const [events, rows] = await Promise.all([
    listEvents(tx, garageId, since),
    listEntriesSince(tx, garageId, ['drive', 'session', 'strip'], since),
  ]);
  const entries = rows.map(entryOf);
  const all = events.map(eventViewOf).map(({ eventId, event }) => ({ id: eventId, event }));
  const past = all
    .filter(({ event }) => event.sort === sort && (event.end ?? event.start) < today)
    .map((event): FormerEvent => ({ event, uses: usesOfEvent(event, entries, all) }));
  const proposal = proposeUse(sort, days, distanceUnit, carId ?? '', lastOf(past, carId));
  return Object.keys(proposal.use).length === 0 ? null : proposal;
}

/** The last ones at which the car did something; where it never did, at which any car did. */
function lastOf(past: readonly FormerEvent[], carId: string | null): FormerEvent[] {
  const own = past.filter(({ uses }) => uses.some(({ car }) => car === carId));
  const any = past.filter(({ uses }) => uses.length > 0);
  return (own.length > 0 ? own : any).slice(-FORMER_MAX);
}
