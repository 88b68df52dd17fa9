import {
  carsTonight,
  type GarageRow,
  listEvents,
  listLayUpsSince,
  listPlannedLayUps,
  readGarage,
  readPublished,
  type SecretKeyRow,
  standingFeed,
  type Tx,
  writePublished,
} from '@quartermark/db';
import { linkAddress } from '@quartermark/digest';
import {
  calendarFeed,
  type FeedCar,
  type FeedOf,
  feedEntries,
  revise,
} from '@quartermark/digest/feed';
import { addDays, todayIn } from '@quartermark/engine/calendar';
import { eventInput } from '@quartermark/engine/log';
import type { World } from '../world.ts';

/** What is over longer stays in nobody's calendar. */
const SINCE_DAYS = 366;

/**
 * A member's calendar as text, what it says of each entry kept with it. It is locked first, so that of two who fetch
 * it at once the second counts on from what the first was told; every statement after that sees the garage as it
 * stands then. Call in a `read committed` transaction.
 *
 * @param origin which the entries' links begin with
 * @returns null: it was revoked
 */
export async function calendarOf(
  world: World,
  tx: Tx,
  { garageId, userId, subjectId }: SecretKeyRow,
  origin: string,
): Promise<string | null> {
  const feed = await standingFeed(tx, garageId, userId, { lock: true });
  if (feed?.id !== subjectId) return null;
  const row = await readGarage(tx, garageId);
  if (row === null) return null;
  const now = world.clock.now();
  const of = await feedOf(tx, row, todayIn(now, row.zone));
  const before = await readPublished(tx, garageId, feed.id);
  const revised = revise(feedEntries(of, linkAddress(origin, garageId)), before, now.getTime());
  const known = new Map(before.map((one) => [one.uid, one.print]));
  const changed = revised.published.filter(({ uid, print }) => known.get(uid) !== print);
  await writePublished(tx, feed, changed);
  return calendarFeed(row.name, revised.entries);
}

async function feedOf(tx: Tx, row: GarageRow, today: string): Promise<FeedOf> {
  const since = addDays(today, -SINCE_DAYS);
  const [layUps, events] = await Promise.all([
    layUpsOf(tx, row.id, { today, since }),
    listEvents(tx, row.id, since),
  ]);
  const cars: FeedCar[] = [];
  for await (const page of carsTonight(tx, row, today, NO_COMPLAINT, { verdicts: false }))
    for (const { id, name, unit, known } of page)
      cars.push({ id, name, unit, known, layUps: layUps.get(id) ?? [] });
  const dated = events.flatMap(({ id, body }) => {
    const event = eventInput.safeParse(body).data;
    if (event === undefined) return [];
    const { name, start, end = start } = event;
    return [{ id, name, start, end, cars: event.cars }];
  });
  return { garage: row.id, cars, events: dated, member: { cars: 'all' } };
}

/** No book is opened, so there is nothing that could not be read. */
const NO_COMPLAINT = () => {};
const NEVER = '9999-12-31';

type LayUp = FeedCar['layUps'][number];

/** By car, what was and what is planned; of a plan that came true only the lay-up it became. */
async function layUpsOf(
  tx: Tx,
  garageId: string,
  { today, since }: { today: string; since: string },
): Promise<Map<string, LayUp[]>> {
  const [windows, plans] = await Promise.all([
    listLayUpsSince(tx, garageId, since),
    listPlannedLayUps(tx, garageId, today),
  ]);
  const byCar = new Map<string, LayUp[]>();
  const add = (carId: string, layUp: LayUp) =>
    byCar.set(carId, [...(byCar.get(carId) ?? []), layUp]);
  for (const { carId, id, startOn, endOn } of windows)
    add(carId, { id, since: startOn, until: endOn });
  for (const { carId, id, startOn, endOn } of plans) {
    const cameTrue = (was: LayUp) =>
      was.since <= (endOn ?? NEVER) && startOn <= (was.until ?? NEVER);
    if (!byCar.get(carId)?.some(cameTrue)) add(carId, { id, since: startOn, until: endOn });
  }
  return byCar;
}
