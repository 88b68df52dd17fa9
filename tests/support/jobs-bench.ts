import { connect, type Db } from '@quartermark/db';
import type { RunningWorker, WorkerOptions } from '@quartermark/jobs/worker';
import { type FreshDatabase, freshDatabase } from './database.ts';
import { eventually } from './eventually.ts';
import { JobsGarage } from './jobs-garage.ts';
import { JobsLedger } from './jobs-ledger.ts';
import { type Backend, redisFor, workerOn } from './jobs-worker.ts';
import type { TestRedis } from './redis.ts';

/** A database, a queue, a garage and any number of workers, set up and taken down together. */
export class JobsBench {
  private readonly workers: RunningWorker[] = [];
  private constructor(
    readonly database: FreshDatabase,
    readonly redis: TestRedis | null,
    readonly app: Db,
    readonly ledger: JobsLedger,
    readonly garage: JobsGarage,
  ) {}

  static async open(name: string, backend: Backend): Promise<JobsBench> {
    const database = await freshDatabase(name);
    const redis = await redisFor(backend);
    const app = connect(database.appUrl, { max: 4 });
    const garage = await new JobsGarage(app).found();
    return new JobsBench(database, redis, app, new JobsLedger(database), garage);
  }

  async start(options: Partial<WorkerOptions>): Promise<RunningWorker> {
    const worker = workerOn(this.database, this.redis, options);
    this.workers.push(worker);
    await worker.ready;
    return worker;
  }

  async stopWorkers(): Promise<void> {
    await Promise.all(this.workers.splice(0).map((worker) => worker.stop()));
  }

  async close(): Promise<void> {
    await this.stopWorkers();
    await Promise.all([this.app.close(), this.ledger.close()]);
    await this.redis?.stop();
    await this.database.drop();
  }

  /** The car's snapshot, once it rests on this version. */
  snapshotAt(carId: string, version: number, garage = this.garage) {
    return eventually(`the snapshot of version ${version}`, async () => {
      const snapshot = await garage.snapshotOf(carId);
      return snapshot?.inputVersion === version && snapshot;
    });
  }

  failureOf(carId: string) {
    return eventually('the failure to be on record', () => this.garage.failureOf(carId));
  }
}
