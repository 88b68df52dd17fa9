import { and, asc, eq, getTableColumns, sql } from 'drizzle-orm';
import { member } from '../auth-schema.ts';
import type { Db } from '../connect.ts';
import { garage } from '../schema.ts';
import type { GarageRow } from './read.ts';

/** All garages of a person, by name, with the person's role in each. */
export function listMyGarages(db: Db, userId: string): Promise<(GarageRow & { role: string })[]> {
  return db.orm.transaction(
    async (tx) => {
      // seen by the policy app_own_garages, which lets people read their own garages' rows
      await tx.execute(sql`select set_config('app.user', ${userId}, true)`);
      return tx
        .select({ ...getTableColumns(garage), role: member.role })
        .from(garage)
        .innerJoin(member, and(eq(member.organizationId, garage.id), eq(member.userId, userId)))
        .orderBy(asc(garage.name), asc(garage.id));
    },
    { accessMode: 'read only' },
  );
}
