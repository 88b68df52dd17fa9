import { connect, type Db, schema } from '@quartermark/db';
import { count, eq, isNull, sql } from 'drizzle-orm';
import type { FreshDatabase } from './database.ts';

/** What the work's own tables say, read as their owner. */
export class JobsLedger {
  private readonly db: Db;
  constructor(database: FreshDatabase) {
    this.db = connect(database.ownerUrl, { max: 2 });
  }

  async workOf(carId: string): Promise<typeof schema.carWork.$inferSelect | null> {
    const { carWork } = schema;
    const [row] = await this.db.orm.select().from(carWork).where(eq(carWork.carId, carId));
    return row ?? null;
  }

  async outboxWaiting(): Promise<number> {
    const { outbox } = schema;
    const [row] = await this.db.orm
      .select({ rows: count() })
      .from(outbox)
      .where(isNull(outbox.publishedAt));
    return row?.rows ?? 0;
  }

  outboxIsEmpty = async (): Promise<boolean> => (await this.outboxWaiting()) === 0;

  /** Nothing is wanted of any car that is not done. */
  allDone = async (): Promise<boolean> => {
    const { carWork } = schema;
    const [row] = await this.db.orm
      .select({ cars: count() })
      .from(carWork)
      .where(sql`${carWork.done} < ${carWork.wanted}`);
    return row?.cars === 0;
  };

  /** As if everything wanted had been wanted so long ago. */
  async backdate(interval: string): Promise<void> {
    const { outbox, carWork } = schema;
    const back = sql`now() - ${interval}::interval`;
    await this.db.orm.update(outbox).set({ at: back });
    await this.db.orm.update(carWork).set({ nextTryAt: back });
  }

  /** As if its time to be tried again had come. */
  async bringForward(carId: string): Promise<void> {
    const { carWork } = schema;
    await this.db.orm
      .update(carWork)
      .set({ nextTryAt: sql`now()` })
      .where(eq(carWork.carId, carId));
  }

  async nextDayOf(garageId: string): Promise<string | null> {
    const { garageDay } = schema;
    const [row] = await this.db.orm
      .select({ at: garageDay.nextDayAt })
      .from(garageDay)
      .where(eq(garageDay.garageId, garageId));
    return row?.at.toISOString() ?? null;
  }

  /** As if the garage had had its letters up to this date. */
  async letterDay(garageId: string, letterDate: string): Promise<void> {
    const { garageDay } = schema;
    await this.db.orm
      .update(garageDay)
      .set({ letterDate, composeAt: new Date(0) })
      .where(eq(garageDay.garageId, garageId));
  }

  /** As if the garage's next day had begun. */
  async openDay(garageId: string): Promise<void> {
    const { garageDay } = schema;
    await this.db.orm
      .update(garageDay)
      .set({ nextDayAt: new Date('2026-03-10T00:00:00Z') })
      .where(eq(garageDay.garageId, garageId));
  }

  /** Cuts every connection of the worker's role, as a restart of the server would. */
  async cutWorkerOff(): Promise<number> {
    const cut = await this.db.orm.execute(
      sql`select pg_terminate_backend(pid) from pg_stat_activity
           where usename = 'job' and datname = current_database()`,
    );
    return cut.length;
  }

  /** Throws away whatever the queue holds in PostgreSQL, schedules included. */
  async emptyQueue(): Promise<void> {
    await this.db.orm.execute(
      sql`truncate bullmq.job, bullmq.dedup, bullmq.dedup_next, bullmq.scheduler cascade`,
    );
  }

  close = (): Promise<void> => this.db.close();
}
