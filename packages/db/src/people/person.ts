import { and, eq, inArray, sql } from 'drizzle-orm';
import { account, member, session, user } from '../auth-schema.ts';
import type { Tx } from '../connect.ts';
import { setup } from '../schema.ts';

/** Role in `member` of whoever tries the demo garage out; it carries no right over members. */
export const DEMO_ROLE = 'demo';

/** Adds a person; with a password hash one can sign in, without only the setup token opens a session. */
export async function addPerson(
  tx: Tx,
  person: { id: string; name: string; email: string; passwordHash: string | null; now: Date },
): Promise<void> {
  const { id, name, email, now } = person;
  await tx.insert(user).values({ id, name, email, createdAt: now, updatedAt: now });
  if (person.passwordHash === null) return;
  await tx.insert(account).values({
    accountId: id,
    providerId: 'credential',
    userId: id,
    password: person.passwordHash,
    createdAt: now,
    updatedAt: now,
  });
}

/** Whether the house has an owner, and whether this person only tries the demo garage. */
export async function standingOf(
  tx: Pick<Tx, 'select'>,
  userId: string,
): Promise<{ ownerExists: boolean; demo: boolean }> {
  const demo = sql<boolean>`exists (select 1 from ${member}
    where ${member.userId} = ${userId} and ${member.role} = ${DEMO_ROLE})`;
  const [row] = await tx.select({ ownerAt: setup.ownerAt, demo }).from(setup);
  return { ownerExists: row?.ownerAt != null, demo: row?.demo ?? false };
}

/** The demo garage and who opens it, if it was opened before. */
export async function findDemo(
  tx: Pick<Tx, 'select'>,
): Promise<{ userId: string; garageId: string } | null> {
  const [row] = await tx
    .select({ userId: member.userId, garageId: member.organizationId })
    .from(member)
    .where(eq(member.role, DEMO_ROLE))
    .limit(1);
  return row ?? null;
}

/** Ends every open session of those who try the demo. */
export async function endDemoSessions(tx: Tx): Promise<void> {
  const triers = tx.select({ id: member.userId }).from(member).where(eq(member.role, DEMO_ROLE));
  await tx.delete(session).where(inArray(session.userId, triers));
}

/** Names of people who wrote in a garage, by id. One who left is not named any more. */
export async function namesOf(
  tx: Pick<Tx, 'select'>,
  garageId: string,
  userIds: readonly string[],
): Promise<Map<string, string>> {
  if (userIds.length === 0) return new Map();
  const rows = await tx
    .select({ id: user.id, name: user.name })
    .from(user)
    .innerJoin(member, eq(member.userId, user.id))
    .where(and(eq(member.organizationId, garageId), inArray(user.id, [...new Set(userIds)])));
  return new Map(rows.map((row) => [row.id, row.name]));
}
