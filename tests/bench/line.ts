import { randomUUID } from 'node:crypto';
import { appRouter, createCallerFactory } from '@quartermark/api/server';
import { type Listener, listen, SNAPSHOT_CHANNEL, type SnapshotNotice } from '@quartermark/db';
import type { Cluster } from '../../apps/launcher/src/postgres/cluster.ts';
import type { Backend } from '../support/jobs-worker.ts';
import { startRedis, type TestRedis } from '../support/redis.ts';
import { WorkerProcess, workerEnv } from '../support/worker-process.ts';
import { Arrivals } from './arrivals.ts';
import { makeDatabase, type Urls } from './database.ts';
import { type DemoHouse, demoHouse } from './demo-house.ts';
import { type Command, type Door, innerDoor, webDoor } from './door.ts';
import { type EmptyTrip, emptyTrip } from './empty-trip.ts';
import type { Times } from './statistics.ts';

export type Latencies = { empty: Times; commitToSnapshot: Times; entryToScreen: Times };

/** The whole way of an entry on one engine of the queue: door, database, worker, news. */
export class Line {
  readonly took: Latencies = { empty: [], commitToSnapshot: [], entryToScreen: [] };
  private readonly snapshots = new Arrivals();
  private readonly screens = new Arrivals();
  private turn = 0;

  private constructor(
    readonly backend: Backend,
    readonly urls: Urls,
    readonly house: DemoHouse,
    readonly carIds: string[],
    private readonly day: { on: string; zone: string },
    private readonly parts: {
      redis: TestRedis | null;
      worker: WorkerProcess;
      inner: Door;
      door: Door;
      trip: EmptyTrip;
      ear: Listener;
    },
  ) {}

  static async open(cluster: Cluster, backend: Backend, throughWeb: boolean): Promise<Line> {
    const urls = await makeDatabase(cluster, `bench_${backend.toLowerCase()}`);
    const redis = backend === 'Redis' ? await startRedis() : null;
    const house = await demoHouse(urls);
    const caller = createCallerFactory(appRouter)(
      house.api.createContext({ headers: new Headers({ cookie: house.cookie }) }),
    );
    const [garage] = await caller.garage.mine();
    const { rows } = await caller.garage.overview({ garageId: house.garageId });
    const inner = innerDoor(house);
    const heard: { line?: Line } = {};
    const ear = listen(
      urls.appUrl,
      SNAPSHOT_CHANNEL,
      (text) => {
        const { c, v } = JSON.parse(text) as SnapshotNotice;
        heard.line?.snapshots.arrived(c, v);
      },
      () => {},
    );
    const empty = redis ? null : await makeDatabase(cluster, 'bench_empty');
    const line = new Line(
      backend,
      urls,
      house,
      rows.map((row) => row.carId),
      { on: garage?.today ?? '', zone: garage?.zone ?? '' },
      {
        redis,
        inner,
        ear,
        worker: new WorkerProcess(
          workerEnv({ ...urls, drop: async () => {} }, redis, {
            QUARTERMARK_TODAY: new Date().toISOString().slice(0, 10),
          }),
        ),
        door: throughWeb ? await webDoor(urls, house) : inner,
        trip: await emptyTrip({
          databaseJobUrl: (empty ?? urls).jobUrl,
          // another database of the same server, so that no key meets the worker's
          redisUrl: redis ? `${redis.url}/1` : undefined,
        }),
      },
    );
    heard.line = line;
    await ear.ready;
    await line.parts.worker.says('worker ready');
    await line.parts.door.look((event) => {
      if (event.kind === 'car') line.screens.arrived(event.carId, event.version);
    });
    return line;
  }

  /** Measures each of the three once. */
  async round(): Promise<void> {
    const { took, parts, snapshots, screens } = this;
    const carId = this.carIds[this.turn % this.carIds.length] as string;
    this.turn += 1;
    took.empty.push(await parts.trip.take());

    const kept = await parts.inner.record(this.command(carId));
    const committed = performance.now();
    took.commitToSnapshot.push((await snapshots.of(carId, kept.version)) - committed);

    const began = performance.now();
    const { version } = await parts.door.record(this.command(carId));
    took.entryToScreen.push((await screens.of(carId, version)) - began);
  }

  /** What was measured so far was for warming up. */
  forget(): void {
    for (const times of Object.values(this.took)) times.length = 0;
  }

  async close(): Promise<void> {
    const { redis, worker, door, trip, ear } = this.parts;
    await door.close();
    await Promise.all([worker.kill('SIGTERM'), trip.close(), ear.close()]);
    await this.house.close();
    await redis?.stop();
  }

  private command(carId: string): Command {
    const common = { id: randomUUID(), car: carId, ...this.day };
    return {
      garageId: this.house.garageId,
      commandId: randomUUID(),
      entry: { ...common, kind: 'note', note: 'Wiped the sill down.' },
    };
  }
}
