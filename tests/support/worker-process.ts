import { type ChildProcess, execFileSync, spawn } from 'node:child_process';
import path from 'node:path';
import type { FreshDatabase } from './database.ts';
import type { TestRedis } from './redis.ts';

const WORKER = path.resolve(import.meta.dirname, '../../apps/worker');

export const WORKER_FILE = path.join(WORKER, 'dist-test/worker.mjs');

/** Bundles the worker as tests run it: the clock may be moved, and it can stop at marked points. */
export function buildTestWorker(): void {
  execFileSync(process.execPath, [path.join(WORKER, 'build.mjs')], {
    env: { ...process.env, TEST_BUILD: '1' },
    stdio: ['ignore', 'ignore', 'inherit'],
  });
}

export const workerEnv = (
  database: FreshDatabase,
  redis: TestRedis | null,
  more: Record<string, string> = {},
): NodeJS.ProcessEnv => ({
  PATH: process.env.PATH,
  DATABASE_JOB_URL: database.jobUrl,
  REDIS_URL: redis?.url ?? '',
  QUARTERMARK_TODAY: '2026-03-10',
  ...more,
});

/** A worker in a process of its own, to be killed. */
export class WorkerProcess {
  private said = '';
  private readonly child: ChildProcess;
  private readonly exited: Promise<number | null>;

  constructor(env: NodeJS.ProcessEnv) {
    this.child = spawn(process.execPath, [WORKER_FILE], { env, stdio: ['ignore', 'pipe', 'pipe'] });
    this.exited = new Promise((resolve) => {
      this.child.once('exit', (code) => resolve(code));
    });
    for (const stream of [this.child.stdout, this.child.stderr])
      stream?.on('data', (data: Buffer) => {
        this.said += data.toString();
        this.child.emit('said');
      });
  }

  /** Of the process, while it runs. */
  get pid(): number {
    if (this.child.pid === undefined) throw new Error('the worker has not started');
    return this.child.pid;
  }

  /** Resolves when the process has written this; fails with all it wrote if it ends before. */
  says(words: string): Promise<void> {
    return new Promise((resolve, reject) => {
      const look = () => this.said.includes(words) && resolve();
      this.child.on('said', look);
      this.child.once('exit', () =>
        reject(new Error(`the worker ended before it said "${words}":\n${this.said}`)),
      );
      look();
    });
  }

  async kill(signal: NodeJS.Signals): Promise<number | null> {
    this.child.kill(signal);
    return this.exited;
  }
}
