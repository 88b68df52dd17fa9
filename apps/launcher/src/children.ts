import { type ChildProcess, spawn } from 'node:child_process';
import path from 'node:path';
import { type LogFile, openLog } from './log-file.ts';
import { until } from './process.ts';

export type ChildOptions = {
  name: 'web' | 'worker';
  /** arguments of node */
  args: string[];
  cwd: string;
  env: NodeJS.ProcessEnv;
  dataDir: string;
  /** whether it serves, asked of this very process and not of one that has its port */
  isReady: (log: LogFile) => boolean | Promise<boolean>;
  say: (line: string) => void;
  onStart: (pid: number) => void;
  /** it ended too often to be started again */
  onGivenUp: (error: Error) => void;
};

export type Child = { ready: Promise<void>; stop(): Promise<void> };

/** How often within a minute a part may end by itself before the app gives up. */
const RESTARTS_PER_MINUTE = 5;
/** From SIGTERM to SIGKILL. An interrupted job is run again, so nothing is lost by it. */
const GRACE_MS = 4_000;
const START_LIMIT_MS = 60_000;

/** Runs a part of the app, starts it again should it end, and stops it in order. */
export function runChild(options: ChildOptions): Child {
  const { name, say } = options;
  let current: ChildProcess | null = null;
  let stopping = false;
  const endings: number[] = [];

  const start = (): { child: ChildProcess; log: LogFile } => {
    const log = openLog(options.dataDir, name);
    const child = spawn(process.execPath, options.args, {
      cwd: options.cwd,
      env: options.env,
      // apart from the launcher's group, so that Ctrl-C reaches the launcher alone
      detached: true,
      stdio: ['ignore', log.fd, log.fd],
    });
    current = child;
    if (child.pid !== undefined) options.onStart(child.pid);
    return { child, log };
  };

  const watch = (child: ChildProcess, log: LogFile) => {
    child.once('exit', (code, signal) => {
      if (stopping) return;
      const how = signal ?? `code ${code}`;
      const now = performance.now();
      endings.push(now);
      if (endings.filter((at) => now - at < 60_000).length > RESTARTS_PER_MINUTE) {
        options.onGivenUp(
          new Error(
            `The ${name} keeps ending (${how}). Its last lines (${log.file}):\n${log.tail()}`,
          ),
        );
        return;
      }
      say(`The ${name} ended (${how}); starting it again. More in ${path.relative('', log.file)}.`);
      const again = start();
      watch(again.child, again.log);
    });
  };

  const first = start();
  const ready = (async () => {
    let ended = '';
    first.child.once('exit', (code, signal) => {
      ended = signal ?? `code ${code}`;
    });
    await until(async () => ended !== '' || (await options.isReady(first.log)), START_LIMIT_MS);
    if (stopping) return;
    if (ended !== '' || !(await options.isReady(first.log)))
      throw new Error(
        `The ${name} ${ended === '' ? 'does not answer' : `ended at its start (${ended})`}. ` +
          `Its last lines (${first.log.file}):\n${first.log.tail()}`,
      );
    watch(first.child, first.log);
  })();

  return {
    ready,
    async stop() {
      stopping = true;
      const child = current;
      if (child === null) return;
      const gone = () => child.exitCode !== null || child.signalCode !== null;
      if (!gone()) child.kill('SIGTERM');
      if (await until(gone, GRACE_MS)) return;
      child.kill('SIGKILL');
      await until(gone, 1_000);
    },
  };
}
