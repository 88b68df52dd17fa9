import { integer, timestamp, uuid } from 'drizzle-orm/pg-core';

/** Columns that most tables have, as the migrations make them. */
export const instant = (name: string) => timestamp(name, { withTimezone: true, mode: 'date' });
export const garageId = () => uuid('garage_id').notNull();
export const revision = () => integer('revision').notNull().default(1);
/** Who wrote the newest revision, and when. */
export const changed = () => ({
  changedAt: instant('changed_at').notNull(),
  changedBy: uuid('changed_by').notNull(),
});
