import { spawn } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { fingerprint, isAlive, until } from './process.ts';
import { clearEarlierRun, runFile } from './run-file.ts';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(path.join(os.tmpdir(), 'quartermark-run-file-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

function sleeper(): number {
  const child = spawn('sleep', ['60'], { detached: true, stdio: 'ignore' });
  child.unref();
  return child.pid ?? 0;
}

test('clearEarlierRun() refuses to start beside a living launcher, and says where it is', async () => {
  const run = runFile(folder);
  run.write({ url: 'http://127.0.0.1:3999', databasePort: null, parts: {} });
  run.note('launcher', process.pid);
  await expect(clearEarlierRun(folder, () => {})).rejects.toThrow(
    'already running at http://127.0.0.1:3999',
  );
  expect(run.read()?.parts.launcher?.pid).toBe(process.pid);
});

test('clearEarlierRun() ends what a killed launcher left', async () => {
  const run = runFile(folder);
  const pid = sleeper();
  await until(() => fingerprint(pid) !== '', 2_000);
  run.write({ url: 'http://127.0.0.1:3999', databasePort: null, parts: {} });
  run.note('worker', pid);
  const said: string[] = [];
  await clearEarlierRun(folder, (line) => said.push(line));
  expect(isAlive(pid)).toBe(false);
  expect(said).toEqual(['Stopping what an earlier start left behind.']);
  expect(run.read()).toBeNull();
});

test('clearEarlierRun() leaves another process alone that was given the same number', async () => {
  const pid = sleeper();
  try {
    runFile(folder).write({
      url: 'http://127.0.0.1:3999',
      databasePort: null,
      parts: { launcher: { pid, fingerprint: '1' }, web: { pid, fingerprint: '1' } },
    });
    await clearEarlierRun(folder, () => {});
    expect(isAlive(pid)).toBe(true);
  } finally {
    process.kill(pid, 'SIGKILL');
  }
});

test('runFile() takes a file that was cut off for none', async () => {
  writeFileSync(path.join(folder, 'run.json'), '{"url": "http:');
  expect(runFile(folder).read()).toBeNull();
  await clearEarlierRun(folder, () => {});
  expect(existsSync(folder)).toBe(true);
});
