import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';

/** Whether a process runs; one that has ended and waits for its parent to notice does not. */
export function isAlive(pid: number): boolean {
  try {
    process.kill(pid, 0);
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'EPERM';
  }
  try {
    // the third field, after the name in brackets (which may hold anything), is the state
    const stat = readFileSync(`/proc/${pid}/stat`, 'utf8');
    return stat.slice(stat.lastIndexOf(')') + 2, stat.lastIndexOf(')') + 3) !== 'Z';
  } catch {
    return process.platform !== 'linux';
  }
}

/**
 * Tells a process from a later one that was given the same number: when it began. `''` when it is gone.
 * (The command line would not do: programs rename themselves.)
 */
export function fingerprint(pid: number): string {
  if (!isAlive(pid)) return '';
  try {
    const stat = readFileSync(`/proc/${pid}/stat`, 'utf8');
    // the 22nd field is the start time in clock ticks since boot; the second may hold spaces
    return stat.slice(stat.lastIndexOf(')') + 2).split(' ')[19] ?? '';
  } catch {
    if (process.platform === 'linux') return '';
    const asked = spawnSync('ps', ['-p', String(pid), '-o', 'lstart='], { encoding: 'utf8' });
    return asked.stdout?.trim() ?? '';
  }
}

/** The command line of a process, `''` where it is gone. */
export function commandOf(pid: number): string {
  try {
    return readFileSync(`/proc/${pid}/cmdline`, 'utf8').replaceAll('\0', ' ').trim();
  } catch {
    if (process.platform === 'linux') return '';
    return (
      spawnSync('ps', ['-p', String(pid), '-o', 'command='], { encoding: 'utf8' }).stdout ?? ''
    );
  }
}

/** Waits until something holds, at most `limitMs`; says whether it came to hold. */
export async function until(
  holds: () => boolean | Promise<boolean>,
  limitMs: number,
  everyMs = 20,
): Promise<boolean> {
  const end = performance.now() + limitMs;
  for (;;) {
    if (await holds()) return true;
    if (performance.now() > end) return false;
    await new Promise((resolve) => setTimeout(resolve, everyMs));
  }
}
