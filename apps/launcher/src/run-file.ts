import { existsSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { fingerprint, until } from './process.ts';

export type Part = 'launcher' | 'web' | 'worker';
type Running = { pid: number; fingerprint: string };
export type Run = {
  /** what people open */
  url: string;
  /** of the embedded database; null: a server of one's own */
  databasePort: number | null;
  parts: Partial<Record<Part, Running>>;
};

/** Keeps note of what runs, so that a later start can find what an earlier one had to leave behind. */
export function runFile(dataDir: string) {
  const file = path.join(dataDir, 'run.json');
  const read = (): Run | null => {
    if (!existsSync(file)) return null;
    try {
      return JSON.parse(readFileSync(file, 'utf8')) as Run;
    } catch {
      // it was cut off while being written by a process that was killed: nothing can be learnt from it
      return null;
    }
  };
  const write = (run: Run) => {
    mkdirSync(dataDir, { recursive: true });
    writeFileSync(`${file}.new`, JSON.stringify(run, null, 2));
    renameSync(`${file}.new`, file);
  };
  const note = (part: Part, pid: number) => {
    const run = read();
    if (run === null) return;
    run.parts[part] = { pid, fingerprint: fingerprint(pid) };
    write(run);
  };
  return { read, write, note, remove: () => rmSync(file, { force: true }) };
}

export function isRunning(part: Running | undefined): part is Running {
  return (
    part !== undefined && part.fingerprint !== '' && fingerprint(part.pid) === part.fingerprint
  );
}

/** Refuses to run beside a living launcher of the same data; ends what a killed one left. */
export async function clearEarlierRun(dataDir: string, say: (line: string) => void): Promise<void> {
  const earlier = runFile(dataDir).read();
  if (earlier === null) return;
  const { launcher, web, worker } = earlier.parts;
  if (isRunning(launcher))
    throw new Error(
      `Quartermark is already running at ${earlier.url} with this data (process ${launcher.pid}). ` +
        `Open it there, or stop it with Ctrl-C in its window (or kill ${launcher.pid}) and start again.`,
    );
  const left = [web, worker].filter(isRunning);
  if (left.length > 0) say('Stopping what an earlier start left behind.');
  for (const part of left) signal(part.pid, 'SIGTERM');
  if (!(await until(() => !left.some(isRunning), 4_000)))
    for (const part of left.filter(isRunning)) signal(part.pid, 'SIGKILL');
  await until(() => !left.some(isRunning), 2_000);
  runFile(dataDir).remove();
}

function signal(pid: number, name: NodeJS.Signals): void {
  try {
    process.kill(pid, name);
  } catch {
    // it ended in between, which is what was wanted
  }
}
