import { randomUUID } from 'node:crypto';
import {
  type Db,
  foundGarage,
  insertCar,
  insertEntry,
  insertItem,
  nextRecorded,
  schema,
  setGarageDay,
  type Tx,
  withGarage,
} from '@quartermark/db';
import { nextMidnight } from '@quartermark/engine/calendar';
import { carInput, entryInput, type ItemDraft, itemInput } from '@quartermark/engine/log';
import { wantRecompute } from '@quartermark/jobs/outbox';
import { and, eq, sql } from 'drizzle-orm';

const NOW = new Date('2026-03-10T10:00:00Z');

const OIL: ItemDraft = {
  name: 'Engine oil',
  role: 'engineOil',
  limits: [{ measure: 'months', value: 12 }],
  baseline: { on: '2026-01-05', odometer: { text: '38,000', unit: 'mi' } },
};

/** A garage with one person in it, written with the queries the verbs use, as the role the web has. */
export class JobsGarage {
  readonly id = randomUUID();
  readonly userId = randomUUID();
  constructor(
    readonly app: Db,
    readonly zone = 'Europe/London',
  ) {}

  async found(now = NOW): Promise<this> {
    const { id, userId, zone } = this;
    await this.app.orm.transaction(async (tx) => {
      await tx.insert(schema.user).values({
        id: userId,
        name: 'Wren Halloway',
        email: `${userId}@example.org`,
        createdAt: now,
        updatedAt: now,
      });
      await foundGarage(
        tx,
        { id, name: 'Pebble Lane', zone, distanceUnit: 'mi', volumeUnit: 'usQt' },
        { userId, role: 'owner', now, nextDayAt: new Date(nextMidnight(now, zone)) },
      );
    });
    return this;
  }

  inside<T>(work: (tx: Tx) => Promise<T>): Promise<T> {
    return withGarage(this.app, { kind: 'user', userId: this.userId }, this.id, work);
  }

  /** A car with one item that was last done on 2026-01-05, or another one. */
  async addCar(item: ItemDraft = OIL): Promise<string> {
    const carId = randomUUID();
    const common = { garageId: this.id, at: NOW, by: this.userId };
    await this.inside(async (tx) => {
      const car = carInput.parse({ name: 'Grey wagon', unit: 'mi' });
      await insertCar(tx, { ...common, id: carId, car });
      const body = itemInput.parse(item);
      await insertItem(tx, { ...common, id: randomUUID(), owner: { carId }, body });
      await wantRecompute(tx, this.id, [carId]);
    });
    return carId;
  }

  /** Records an odometer reading. @returns the input version it produced */
  record(carId: string, miles: number): Promise<number> {
    return this.inside(async (tx) => {
      await this.write(tx, carId, miles);
      return (await wantRecompute(tx, this.id, [carId])).get(carId) ?? 0;
    });
  }

  /** The same, but nobody is told: what is left when a notification goes missing. */
  recordUnheard(carId: string, miles: number): Promise<number> {
    return this.inside(async (tx) => {
      await this.write(tx, carId, miles);
      const { car, carWork, outbox } = schema;
      const [raised] = await tx
        .update(car)
        .set({ inputVersion: sql`${car.inputVersion} + 1` })
        .where(and(eq(car.garageId, this.id), eq(car.id, carId)))
        .returning({ version: car.inputVersion });
      const version = raised?.version ?? 0;
      await tx
        .update(carWork)
        .set({ wanted: version })
        .where(and(eq(carWork.garageId, this.id), eq(carWork.carId, carId)));
      await tx.insert(outbox).values({ garageId: this.id, carId, inputVersion: version });
      return version;
    });
  }

  /** Stores an entry that today's schema refuses, as an older version might have left it. */
  async recordUnreadable(carId: string): Promise<string> {
    const id = randomUUID();
    const body = { kind: 'odometer', id, on: '2026-03-01', zone: this.zone, car: carId } as never;
    await this.inside(async (tx) => {
      await insertEntry(tx, {
        garageId: this.id,
        body,
        recorded: await nextRecorded(tx, this.id),
        at: NOW,
        by: this.userId,
        commandId: randomUUID(),
      });
      await wantRecompute(tx, this.id, [carId]);
    });
    return id;
  }

  /** Moves the garage to another zone, with all that hangs on it. */
  moveTo(zone: string, now: Date): Promise<void> {
    const { garage } = schema;
    return this.inside(async (tx) => {
      await tx.update(garage).set({ zone }).where(eq(garage.id, this.id));
      await setGarageDay(tx, {
        garageId: this.id,
        zone,
        nextDayAt: new Date(nextMidnight(now, zone)),
      });
      await wantRecompute(tx, this.id, 'all');
    });
  }

  removeCar(carId: string): Promise<void> {
    const { car } = schema;
    return this.inside(async (tx) => {
      await tx
        .update(car)
        .set({ removedAt: NOW })
        .where(and(eq(car.garageId, this.id), eq(car.id, carId)));
      await wantRecompute(tx, this.id, [carId]);
    });
  }

  private async write(tx: Tx, carId: string, miles: number): Promise<void> {
    const body = entryInput.parse({
      kind: 'odometer',
      id: randomUUID(),
      on: '2026-03-01',
      zone: this.zone,
      car: carId,
      odometer: { text: String(miles), unit: 'mi' },
    });
    await insertEntry(tx, {
      garageId: this.id,
      body,
      recorded: await nextRecorded(tx, this.id),
      at: NOW,
      by: this.userId,
      commandId: randomUUID(),
    });
  }

  async snapshotOf(carId: string): Promise<typeof schema.snapshot.$inferSelect | null> {
    const [row] = await this.inside((tx) =>
      tx.select().from(schema.snapshot).where(eq(schema.snapshot.carId, carId)),
    );
    return row ?? null;
  }

  async failureOf(carId: string): Promise<typeof schema.failure.$inferSelect | null> {
    const [row] = await this.inside((tx) =>
      tx.select().from(schema.failure).where(eq(schema.failure.carId, carId)),
    );
    return row ?? null;
  }
}
