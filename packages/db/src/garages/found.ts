import { member, organization } from '../auth-schema.ts';
import type { Tx } from '../connect.ts';
import { garage, garageDay } from '../schema.ts';
import { enterGarage } from '../with-garage.ts';

export type NewGarage = Omit<
  typeof garage.$inferInsert,
  'recorded' | 'revision' | 'changedAt' | 'changedBy'
>;

export type Founder = {
  userId: string;
  /** role in the garage: `owner`, or `demo` for whoever only looks at the demo */
  role: string;
  now: Date;
  /** the instant at which the garage's next civil day begins */
  nextDayAt: Date;
};

/**
 * Makes a garage with its organization and first member, and enters it: the rest of the transaction
 * works inside. For a transaction that is in no garage yet.
 *
 * @returns false if the id is taken; nothing was made and nothing entered
 */
export async function foundGarage(tx: Tx, row: NewGarage, founder: Founder): Promise<boolean> {
  const { userId, role, now, nextDayAt } = founder;
  const made = await tx
    .insert(organization)
    .values({ id: row.id, name: row.name, slug: row.id, createdAt: now })
    .onConflictDoNothing()
    .returning({ id: organization.id });
  if (made.length === 0) return false;
  await tx.insert(member).values({ organizationId: row.id, userId, role, createdAt: now });
  await enterGarage(tx, row.id);
  await tx.insert(garage).values({ ...row, changedAt: now, changedBy: userId });
  await tx.insert(garageDay).values({ garageId: row.id, zone: row.zone, nextDayAt });
  return true;
}
