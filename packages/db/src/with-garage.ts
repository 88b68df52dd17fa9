import { and, eq, sql } from 'drizzle-orm';
import { member } from './auth-schema.ts';
import type { Db, Tx } from './connect.ts';

export type Actor = { kind: 'user'; userId: string } | { kind: 'job' };

/** What the actor may do here; `job` for the worker. Roles of people are those of `member`. */
export type GarageRole = 'owner' | 'admin' | 'member' | 'job' | (string & {});

export type GarageOptions = {
  isolation?: 'read committed' | 'repeatable read' | 'serializable';
  readOnly?: boolean;
};

/** No such garage, or not one of this person's: whoever asks cannot tell which. */
export class NotYours extends Error {
  override readonly name = 'NotYours';
  constructor(readonly garageId: string) {
    super(`could not open garage ${garageId}: it does not exist, or you are not a member of it`);
  }
}

/**
 * The only way to a garage's tables: opens a transaction in which row-level security shows this one
 * garage. For a person, membership is checked in the same transaction.
 *
 * @throws NotYours if the person is no member, or the id is not an id
 */
export function withGarage<T>(
  db: Db,
  actor: Actor,
  garageId: string,
  fn: (tx: Tx, role: GarageRole) => Promise<T>,
  options: GarageOptions = {},
): Promise<T> {
  if (!UUID.test(garageId)) return Promise.reject(new NotYours(garageId));
  return db.orm.transaction(
    async (tx) => {
      await enterGarage(tx, garageId);
      const role = actor.kind === 'job' ? 'job' : await roleOf(tx, garageId, actor.userId);
      if (role === null) throw new NotYours(garageId);
      return fn(tx, role);
    },
    {
      // an empty configuration would become "set transaction" and nothing
      isolationLevel: options.isolation ?? 'read committed',
      ...(options.readOnly ? { accessMode: 'read only' as const } : {}),
    },
  );
}

/** Sets the garage until the end of the transaction. Use `withGarage`, which also asks who you are. */
export async function enterGarage(tx: Tx, garageId: string): Promise<void> {
  await tx.execute(sql`select set_config('app.garage', ${garageId}, true)`);
}

async function roleOf(tx: Tx, garageId: string, userId: string): Promise<string | null> {
  const [found] = await tx
    .select({ role: member.role })
    .from(member)
    .where(and(eq(member.organizationId, garageId), eq(member.userId, userId)));
  return found?.role ?? null;
}

const UUID = /^[\da-f]{8}-[\da-f]{4}-[\da-f]{4}-[\da-f]{4}-[\da-f]{12}$/i;
