import {
  carPage,
  changeWish as changeRow,
  letterReaders,
  readGarage,
  readPostShown,
  readWish,
} from '@quartermark/db';
import { SEND_MINUTE_USUAL } from '@quartermark/digest/hours';
import { addDays } from '@quartermark/engine/calendar';
import { z } from 'zod';
import { commandFields, id } from '../asked.ts';
import { inGarage } from '../command/in-garage.ts';
import { runCommand, type Writing } from '../command/run-command.ts';
import { garageViewOf } from '../garage/view-of.ts';
import type { WishView } from '../letter-views.ts';
import { badField, notFoundHere } from '../refused.ts';
import { staleOrNone } from '../stale.ts';
import type { Written } from '../views.ts';
import type { Asker, World } from '../world.ts';

const CARS_MAX = 10_000;

export const letterWishInput = z.strictObject({ garageId: id });

/** What the asker wants of the garage's letters. */
export function letterWish(
  world: World,
  asker: Asker,
  { garageId }: z.output<typeof letterWishInput>,
): Promise<WishView> {
  return inGarage(world, asker, garageId, async (tx) => {
    const [row, [reader], post, { cars }] = await Promise.all([
      readGarage(tx, garageId),
      letterReaders(tx, garageId, asker.userId),
      readPostShown(tx, garageId),
      carPage(tx, { garageId, after: null, limit: CARS_MAX }),
    ]);
    if (!row || !reader) throw notFoundHere('garage', 'garageId');
    const { wish, revision, email } = reader;
    return {
      garage: garageViewOf(row, world.clock.now()),
      wish,
      revision,
      usual: revision === 0,
      to: email,
      canMail: !row.demo && post?.mail != null,
      cars,
      sendMinute: post?.sendMinute ?? SEND_MINUTE_USUAL,
    };
  });
}

/** Somebody who forgets a pause hears again within the year. */
const PAUSE_DAYS_MAX = 366;

const wish = z.strictObject({
  rhythm: z.discriminatedUnion('every', [
    z.strictObject({ every: z.literal('night') }),
    z.strictObject({ every: z.literal('week'), on: z.int().min(1).max(7) }),
  ]),
  onlyIfNew: z.boolean(),
  beforeEvents: z.boolean(),
  pausedUntil: z.iso.date().nullable(),
  mail: z.boolean(),
  cars: z.union([z.literal('all'), z.array(id).min(1).max(CARS_MAX)]),
});

export const changeWishInput = z.strictObject({
  ...commandFields,
  /** 0 where nothing was ever said */
  baseRevision: z.int().nonnegative(),
  wish,
});

type ChangeWish = z.output<typeof changeWishInput>;

/** Says what the asker wants of the garage's letters. */
export function changeWish(world: World, asker: Asker, input: ChangeWish): Promise<Written> {
  return runCommand(world, asker, 'letter.changeWish', input, async (writing) => {
    const { garage, now } = writing;
    const last = addDays(garageViewOf(garage, now).today, PAUSE_DAYS_MAX);
    const { pausedUntil } = input.wish;
    if (pausedUntil !== null && pausedUntil > last)
      throw badField(
        'wish.pausedUntil',
        `wish.pausedUntil: a pause ends within a year; choose a day up to ${last}`,
      );
    await mustBeHere(writing, input.wish.cars);
    return { id: asker.userId, revision: await write(writing, input), version: 0 };
  });
}

async function mustBeHere({ tx, garage }: Writing, wanted: 'all' | string[]): Promise<void> {
  if (wanted === 'all') return;
  const { cars } = await carPage(tx, { garageId: garage.id, after: null, limit: CARS_MAX });
  const here = new Set(cars.map(({ carId }) => carId));
  if (!wanted.some((car) => here.has(car)))
    throw badField(
      'wish.cars',
      'wish.cars: none of these cars is in this garage; choose at least one, or all',
    );
}

async function write({ tx, garage, now: at, by }: Writing, input: ChangeWish): Promise<number> {
  const { baseRevision } = input;
  const change = { garageId: garage.id, userId: by, baseRevision, wish: input.wish, at, by };
  const revision = await changeRow(tx, change);
  if (revision !== null) return revision;
  const row = await readWish(tx, garage.id, by);
  const said = { what: 'What you want of the letters was', none: 'nothing was said yet' };
  throw await staleOrNone(tx, garage.id, said, baseRevision, row);
}
