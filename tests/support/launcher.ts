import { type ChildProcess, spawn } from 'node:child_process';
import { readdirSync, readFileSync, readlinkSync } from 'node:fs';
import path from 'node:path';
import { freePort } from '../../apps/launcher/src/free-port.ts';
import { isAlive, until } from '../../apps/launcher/src/process.ts';
import { type Run, runFile } from '../../apps/launcher/src/run-file.ts';

const root = path.resolve(import.meta.dirname, '../..');
const STARTED = 'Quartermark is running';

export type Launched = {
  launcher: ChildProcess;
  origin: string;
  port: number;
  /** all it printed so far */
  output(): string;
  /** the setup token it printed; null once an owner exists */
  token(): string | null;
  run(): Run;
  /** the launcher and everything it started that lives */
  processes(): number[];
  /** sends a signal and waits for the end; resolves with the exit code and the time it took */
  stop(signal?: NodeJS.Signals): Promise<{ code: number | null; tookMs: number }>;
};

/** The app as `npm start` runs it, from the test build, on a data folder and a port of its own. */
export async function launch(dataDir: string, env: Record<string, string> = {}): Promise<Launched> {
  const port = Number(env.PORT ?? (await freePort()));
  const launcher = spawn(process.execPath, [path.join(root, 'apps/launcher/src/start.mjs')], {
    cwd: root,
    env: { ...process.env, TEST_BUILD: '1', DATA_DIR: dataDir, PORT: String(port), ...env },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  let printed = '';
  for (const stream of [launcher.stdout, launcher.stderr])
    stream.on('data', (data) => {
      printed += data;
    });
  const gone = () => launcher.exitCode !== null || launcher.signalCode !== null;
  await until(() => gone() || /Stop {3}Ctrl-C/.test(printed), 240_000);
  if (gone() || !printed.includes(STARTED)) {
    launcher.kill('SIGKILL');
    throw new Error(`the launcher did not start:\n${printed}`);
  }
  return {
    launcher,
    port,
    origin: `http://127.0.0.1:${port}`,
    output: () => printed,
    token: () => /start\?token=([\w-]+)/.exec(printed)?.[1] ?? null,
    run: () => {
      const run = runFile(dataDir).read();
      if (run === null) throw new Error('nothing runs');
      return run;
    },
    processes: () => descendants(launcher.pid ?? 0),
    async stop(signal = 'SIGTERM') {
      const began = performance.now();
      if (!gone()) launcher.kill(signal);
      await until(gone, 20_000);
      return { code: launcher.exitCode, tookMs: performance.now() - began };
    },
  };
}

/** A process and all that descend from it. */
function descendants(pid: number): number[] {
  const parents = new Map<number, number>();
  for (const name of readdirSync('/proc')) {
    if (!/^\d+$/.test(name)) continue;
    try {
      const stat = readFileSync(`/proc/${name}/stat`, 'utf8');
      parents.set(Number(name), Number(stat.slice(stat.lastIndexOf(')') + 2).split(' ')[1]));
    } catch {
      // it ended while the list was read
    }
  }
  const found = [pid];
  for (const ancestor of found)
    for (const [child, parent] of parents) if (parent === ancestor) found.push(child);
  return found.filter(isAlive);
}

/** Addresses on which these processes wait for connections, as `127.0.0.1:3000`. */
export function listeningAddresses(pids: number[]): string[] {
  const sockets = new Set(pids.flatMap(socketsOf));
  return ['tcp', 'tcp6'].flatMap((table) =>
    readFileSync(`/proc/net/${table}`, 'utf8')
      .split('\n')
      .slice(1)
      .map((line) => line.trim().split(/\s+/))
      // the fourth column is the state, 0A = LISTEN; the tenth the socket's inode (proc(5))
      .filter((column) => column[3] === '0A' && sockets.has(column[9] ?? ''))
      .map((column) => readable(column[1] ?? '')),
  );
}

function socketsOf(pid: number): string[] {
  try {
    return readdirSync(`/proc/${pid}/fd`).flatMap((fd) => {
      const target = readlinkSync(`/proc/${pid}/fd/${fd}`);
      return /^socket:\[(\d+)\]$/.exec(target)?.[1] ?? [];
    });
  } catch {
    return [];
  }
}

function readable(hex: string): string {
  const [address = '', port = ''] = hex.split(':');
  const bytes = address.match(/../g)?.map((pair) => Number.parseInt(pair, 16)) ?? [];
  const shown = bytes.length === 4 ? bytes.reverse().join('.') : `[${address}]`;
  return `${shown}:${Number.parseInt(port, 16)}`;
}
