import { eq, sql } from 'drizzle-orm';
import type { Db, Tx } from '../connect.ts';
import { delivery, deliveryDue, digest, letter, postSetting, secretKey } from '../letter-schema.ts';
import { garageDay } from '../schema.ts';

export type GarageToCompose = {
  garageId: string;
  zone: string;
  /** the latest civil date that has had its letters */
  letterDate: string | null;
};

/** Garages that may have letters to be composed, by id. @param after the last id of the page before */
export async function garagesToCompose(
  db: Db,
  now: Date,
  page: { after: string | null; limit: number },
): Promise<GarageToCompose[]> {
  return db.orm.execute<GarageToCompose>(sql`
    select garage_id as "garageId", zone, letter_date::text as "letterDate"
    from garage_day
    where compose_at <= ${now.toISOString()}::timestamptz
      ${page.after === null ? sql`` : sql`and garage_id > ${page.after}::uuid`}
    order by garage_id
    limit ${page.limit}`) as unknown as Promise<GarageToCompose[]>;
}

/** The latest civil date of a garage that has had its letters; null: none yet. */
export async function lastLetterDate(tx: Tx, garageId: string): Promise<string | null> {
  const [found] = await tx
    .select({ letterDate: garageDay.letterDate })
    .from(garageDay)
    .where(eq(garageDay.garageId, garageId));
  return found?.letterDate ?? null;
}

/** One garage's day, locked until the transaction ends; null: it has no day yet. */
export async function lockLetterDay(tx: Tx, garageId: string): Promise<GarageToCompose | null> {
  const [found] = await tx
    .select({
      garageId: garageDay.garageId,
      zone: garageDay.zone,
      letterDate: garageDay.letterDate,
    })
    .from(garageDay)
    .where(eq(garageDay.garageId, garageId))
    .for('update');
  return found ?? null;
}

/** Sets which date has had its letters, and when to look again. */
export async function setLetterDay(
  tx: Tx,
  garageId: string,
  day: { letterDate: string | null; composeAt: Date },
): Promise<void> {
  await tx.update(garageDay).set(day).where(eq(garageDay.garageId, garageId));
}

export type PostSettingRow = typeof postSetting.$inferSelect;

/** The garage's hour, mail server and webhook, secrets included: for the worker alone. */
export async function readPost(tx: Tx, garageId: string): Promise<PostSettingRow | null> {
  const [found] = await tx.select().from(postSetting).where(eq(postSetting.garageId, garageId));
  return found ?? null;
}

/** @returns false if that date has had its letters: somebody else was faster */
export async function insertDigest(tx: Tx, row: typeof digest.$inferInsert): Promise<boolean> {
  const made = await tx
    .insert(digest)
    .values(row)
    .onConflictDoNothing()
    .returning({ date: digest.date });
  return made.length > 0;
}

export async function insertLetter(tx: Tx, row: typeof letter.$inferInsert): Promise<void> {
  await tx.insert(letter).values(row);
}

/** Something is to leave the house, at an instant or later. */
export async function insertDelivery(
  tx: Tx,
  row: typeof delivery.$inferInsert,
  dueAt: Date,
): Promise<void> {
  const { garageId, id } = row;
  await tx.insert(delivery).values(row);
  await tx.insert(deliveryDue).values({ garageId, id, dueAt });
}

export async function insertSecretKey(tx: Tx, row: typeof secretKey.$inferInsert): Promise<void> {
  await tx.insert(secretKey).values(row);
}
