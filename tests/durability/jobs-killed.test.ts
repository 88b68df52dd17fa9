import { execFileSync, spawn } from 'node:child_process';
import { once } from 'node:events';
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { listen } from '@quartermark/db';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { eventually } from '../support/eventually.ts';
import { JobsBench } from '../support/jobs-bench.ts';
import { BACKENDS } from '../support/jobs-worker.ts';
import {
  buildTestWorker,
  WORKER_FILE,
  WorkerProcess,
  workerEnv,
} from '../support/worker-process.ts';

beforeAll(buildTestWorker);

describe.each(BACKENDS)('a worker that dies', ({ backend, here }) => {
  describe.skipIf(!here)(`queue on ${backend}`, () => {
    let bench: JobsBench;
    const running: WorkerProcess[] = [];
    const start = (more: Record<string, string> = {}) => {
      const worker = new WorkerProcess(workerEnv(bench.database, bench.redis, more));
      running.push(worker);
      return worker;
    };

    beforeAll(async () => {
      bench = await JobsBench.open('jobs_killed', backend);
    });
    afterEach(async () => {
      await Promise.all(running.splice(0).map((worker) => worker.kill('SIGKILL')));
    });
    afterAll(() => bench?.close());

    test.each(['afterRead', 'beforeWrite'])(
      'an entry committed before a SIGKILL %s is recomputed by the next worker',
      async (point) => {
        const killed = start({ QUARTERMARK_PAUSE_AT: point });
        await killed.says('worker ready');
        const carId = await bench.garage.addCar();
        const version = await bench.garage.record(carId, 38_412);
        await killed.says(`paused at ${point}`);
        await killed.kill('SIGKILL');
        expect(await bench.garage.snapshotOf(carId)).toBeNull();

        await start().says('worker ready');
        // the dead worker's lock has to run out first
        const snapshot = await eventually(
          'the next worker to have taken over',
          async () => {
            const row = await bench.garage.snapshotOf(carId);
            return row?.inputVersion === version && row;
          },
          60_000,
        );
        expect(snapshot.lane).toMatchObject({ odometer: { on: '2026-03-01' } });
      },
    );

    test('a relay killed between acknowledgement and mark has one effect', async () => {
      const killed = start({ QUARTERMARK_PAUSE_AT: 'afterPublish' });
      await killed.says('worker ready');
      const notices: string[] = [];
      const ear = listen(
        bench.database.appUrl,
        'qm_snapshot',
        (text) => notices.push(text),
        () => {},
      );
      await ear.ready;
      const carId = await bench.garage.addCar();
      await killed.says('paused at afterPublish');
      const before = await bench.snapshotAt(carId, 2);
      await killed.kill('SIGKILL');
      expect(await bench.ledger.outboxWaiting()).toBe(1);

      await start().says('worker ready');
      await eventually('the row to be published again', bench.ledger.outboxIsEmpty);
      // a job of its own behind the one that was published again
      const other = await bench.garage.addCar();
      await bench.snapshotAt(other, 2);
      expect((await bench.garage.snapshotOf(carId))?.computedAt).toEqual(before.computedAt);
      await ear.close();
      expect(notices.filter((text) => text.includes(carId))).toHaveLength(1);
    });

    test('500 entries written an hour ago with the worker down are all done after its start', async () => {
      const versions = new Map<string, number>();
      for (let car = 0; car < 5; car += 1) versions.set(await bench.garage.addCar(), 0);
      for (let entry = 1; entry <= 100; entry += 1)
        for (const carId of versions.keys())
          versions.set(carId, await bench.garage.record(carId, 38_000 + entry));
      await bench.ledger.backdate('1 hour');

      await start().says('worker ready');
      await eventually('everything to be done', bench.ledger.allDone);
      expect(await bench.ledger.outboxWaiting()).toBe(0);
      for (const [carId, version] of versions) {
        const snapshot = await bench.garage.snapshotOf(carId);
        expect(snapshot?.inputVersion).toBe(version);
        // 38,100 miles as kilometres (1 mile = 1.609344 km, exact), in a lane to the metre
        expect(snapshot?.lane.odometer?.readingKm).toBe(61_316.006);
      }
    });

    test('SIGTERM ends the process within five seconds, tidily', async () => {
      const worker = start();
      await worker.says('worker ready');
      const asked = Date.now();
      expect(await worker.kill('SIGTERM')).toBe(0);
      expect(Date.now() - asked).toBeLessThan(5000);
    });

    test('SIGTERM ends the process within five seconds though a job hangs', async () => {
      const worker = start({ QUARTERMARK_PAUSE_AT: 'beforeWrite' });
      await worker.says('worker ready');
      await bench.garage.addCar();
      await worker.says('paused at beforeWrite');
      const asked = Date.now();
      expect(await worker.kill('SIGTERM')).toBe(0);
      expect(Date.now() - asked).toBeLessThan(6000);
    });
  });
});

test('a worker ends when its parent process has gone', async () => {
  const bench = await JobsBench.open('jobs_orphan', 'PostgreSQL');
  const parent = spawn(
    'sh',
    ['-c', `"${process.execPath}" "${WORKER_FILE}" & echo "pid $!"; wait`],
    {
      env: workerEnv(bench.database, null),
      stdio: ['ignore', 'pipe', 'inherit'],
    },
  );
  let said = '';
  parent.stdout?.on('data', (data: Buffer) => {
    said += data.toString();
  });
  await eventually('the worker to be ready', async () => said.includes('worker ready'));
  const pid = /pid (\d+)/.exec(said)?.[1] ?? '';
  expect(runs(pid)).toBe(true);
  parent.kill('SIGKILL');
  await once(parent, 'exit');
  await eventually('the worker to have ended', async () => !runs(pid));
  await bench.close();
});

test('the plain build knows no clock of tests and no point to stop at', () => {
  const folder = path.dirname(path.dirname(WORKER_FILE));
  execFileSync(process.execPath, [path.join(folder, 'build.mjs')], {
    env: { ...process.env, TEST_BUILD: '' },
  });
  const plain = readFileSync(path.join(folder, 'dist/worker.mjs'), 'utf8');
  const knows = (file: string, word: string) => file.includes(word);
  expect(knows(plain, 'DATABASE_JOB_URL')).toBe(true);
  for (const word of ['QUARTERMARK_TODAY', 'QUARTERMARK_PAUSE_AT', 'paused at']) {
    expect(knows(plain, word)).toBe(false);
    expect(knows(readFileSync(WORKER_FILE, 'utf8'), word)).toBe(true);
  }
});

function runs(pid: string): boolean {
  try {
    process.kill(Number(pid), 0);
    return true;
  } catch {
    return false;
  }
}
